package padwright.jobfile;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import padwright.design.Job;
import padwright.design.Units;

class JobWriterTest {
  private final JobReader reader = new JobReader(Materials.small());

  @Test
  void writingAndReadingGivesTheSameJobToTheLastDigit() {
    RandomJobs jobs = new RandomJobs(20260601);
    for (int i = 0; i < 3_000; i++) {
      Job job = jobs.job();
      String text = JobWriter.write(job);
      Job back = reader.read("job-" + i + ".json", text);
      assertThat(back).as(text).isEqualTo(job);
      assertThat(JobWriter.write(back)).isEqualTo(text);
    }
  }

  @Test
  void whatIsWrittenIsJsonForAnotherReaderToo() throws Exception {
    // Jackson's own tree reader, which shares nothing with the writer.
    RandomJobs jobs = new RandomJobs(7);
    for (int i = 0; i < 200; i++) {
      Job job = jobs.job();
      assertThat(new ObjectMapper().readTree(JobWriter.write(job)).get("title").asText())
          .isEqualTo(job.title());
    }
  }

  @Test
  void theSameJobReadInOtherUnitsKeepsEveryLength() {
    RandomJobs jobs = new RandomJobs(11);
    for (int i = 0; i < 500; i++) {
      Job job = jobs.job();
      Units other = job.units() == Units.MM ? Units.INCH : Units.MM;
      Job turned = new Job(job.title(), job.client(), job.date(), other, job.parts());
      assertThat(reader.read("x", JobWriter.write(turned)).parts()).isEqualTo(job.parts());
    }
  }

  // By hand: 25.4 mm to the inch.
  @ParameterizedTest(name = "{0} mm in a job in {1} is written {2}")
  @CsvSource(
      quoteCharacter = '`',
      value = {
        "12, MM, 12",
        "0.5, MM, 0.5",
        "1000, MM, 1000",
        "31.75, MM, 31.75",
        "-6, MM, -6",
        "0, MM, 0",
        "304.8, INCH, 12",
        "31.75, INCH, 1 1/4 in",
        "-3.175, INCH, -1/8 in",
        "0.79375, INCH, 1/32 in",
        "33.02, INCH, 1.3",
        "0.0762, INCH, 0.003",
        "12, INCH, 12 mm",
        "0, INCH, 0",
      })
  void aLengthIsWrittenAsAMakerWouldWriteIt(double mm, Units units, String text) {
    assertThat(LengthJson.of(mm, units)).hasToString(text);
  }

  @Test
  void theTextIsOneFixedReadableForm() {
    String text = JobWriter.write(reader.read("x", JobText.deskRest()));
    assertThat(text.lines().toList())
        .isEqualTo(
            List.of(
                "{",
                "  \"format\": \"padwright-job\",",
                "  \"version\": 1,",
                "  \"title\": \"Reading nook\",",
                "  \"units\": \"mm\",",
                "  \"parts\": [",
                "    {",
                "      \"id\": \"desk-rest\",",
                "      \"name\": \"Forearm rest\",",
                "      \"build\": \"wrapped\",",
                "      \"kind\": \"pad\",",
                "      \"quantity\": 2,",
                "      \"base\": {",
                "        \"outline\": { \"rectangle\": { \"length\": 600, \"width\": 60 } },",
                "        \"size\": \"board\",",
                "        \"board\": \"birch-plywood\",",
                "        \"thickness\": 12",
                "      },",
                "      \"foam\": [",
                "        { \"foam\": \"firm\", \"thickness\": 12 },",
                "        { \"foam\": \"medium\", \"thickness\": 12, \"overhang\": 3 }",
                "      ],",
                "      \"edge\": { \"round\": 6 },",
                "      \"cover\": { \"covering\": \"knit-backed-vinyl\", \"thickness\": 1,"
                    + " \"turnUnder\": 20, \"grip\": 0 },",
                "      \"corners\": \"auto\",",
                "      \"staples\": { \"leg\": 8, \"spacing\": 25, \"edgeDistance\": 10 },",
                "      \"dustCover\": true",
                "    }",
                "  ]",
                "}"));
  }
}
