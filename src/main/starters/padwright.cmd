@echo off
rem As the file padwright, for Windows.
setlocal
set "JAR=%~dp0padwright.jar"
if not exist "%JAR%" (
  echo Refused: %JAR% is not there. It belongs beside this file: mvn -q package -DskipTests makes both. 1>&2
  exit /b 2
)
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
"%JAVA%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -jar "%JAR%" %*
exit /b %ERRORLEVEL%
