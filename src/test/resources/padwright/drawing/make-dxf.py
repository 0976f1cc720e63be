"""Makes the DXF files of this folder with ezdxf (Debian package python3-ezdxf): python3 make-dxf.py FOLDER

They were written by a library that is not ours, so that the reader is held to the format and not to itself.
"""
import sys

import ezdxf

R=sys.argv[1]
def save(doc,name): doc.saveas(f"{R}/{name}.dxf")
# R12: slot of 2 lines and 2 arcs with small gaps, text and a hole
doc=ezdxf.new('R12'); m=doc.modelspace(); doc.layers.add('NOTES'); doc.layers.add('CUT')
m.add_line((0,0),(200,0),dxfattribs={'layer':'CUT'})
m.add_arc((200,30),30,-90,90,dxfattribs={'layer':'CUT'})
m.add_line((0,60.05),(200,60.05),dxfattribs={'layer':'CUT'})   # drawn the other way, 0.05 too high
m.add_arc((0,30),30,90,270,dxfattribs={'layer':'CUT'})
m.add_circle((100,30),12,dxfattribs={'layer':'CUT'})
for i in range(3): m.add_text(f"note {i}",dxfattribs={'layer':'NOTES'})
m.add_line((0,-50),(200,-50),dxfattribs={'layer':'NOTES'})
save(doc,'slot-r12')
# R12 old polyline with bulge
doc=ezdxf.new('R12'); m=doc.modelspace()
m.add_polyline2d([(0,0,0),(100,0,1),(100,80,0),(0,80,0)],format='xyb',close=True)
save(doc,'polyline-r12')
# R2000, inches
doc=ezdxf.new('R2000'); doc.header['$INSUNITS']=1; m=doc.modelspace()
m.add_lwpolyline([(1,1,0.41421356237309503),(13,1,0),(13,9,0),(1,9,0)],format='xyb',close=True)
save(doc,'inches-r2000')
# R2010, mm, seen from below
doc=ezdxf.new('R2010'); doc.header['$INSUNITS']=4; m=doc.modelspace()
m.add_lwpolyline([(0,0,0),(100,0,0.5),(100,40,0),(0,70,0)],format='xyb',close=True,dxfattribs={'extrusion':(0,0,-1)})
save(doc,'below-r2010')
# everything that is left
doc=ezdxf.new('R2010'); doc.header['$INSUNITS']=4; m=doc.modelspace(); psp=doc.layout('Layout1')
doc.layers.add('OFF').off(); doc.layers.add('FROZEN').freeze()
m.add_lwpolyline([(0,0),(300,0),(300,200),(0,200)],close=True,dxfattribs={'layer':'BOARD'})
m.add_lwpolyline([(10,10),(20,10),(20,20)],close=True,dxfattribs={'layer':'OFF'})
m.add_circle((50,50),5,dxfattribs={'layer':'FROZEN'})
psp.add_line((0,0),(10,10))
m.add_line((0,0,0),(0,0,50)); m.add_circle((30,30),5,dxfattribs={'extrusion':(1,0,0)})
m.add_spline([(0,0),(10,10),(20,0)]); m.add_ellipse((100,100),(20,0),0.5)
b=doc.blocks.new('KNOB'); b.add_circle((0,0),3); m.add_blockref('KNOB',(150,150))
m.add_mtext('turn me'); m.add_point((1,1)); h=m.add_hatch(); h.paths.add_polyline_path([(0,0),(1,0),(1,1)])
m.add_lwpolyline([(400,0),(450,0),(450,50),(400,50)],close=True)
m.add_circle((100,100),40); m.add_circle((100,100),20); m.add_lwpolyline([(0,0),(300,0),(300,200),(0,200)],close=True)
m.add_polyline3d([(0,0,0),(10,0,5),(10,10,0)])
save(doc,'left-r2010')
# arc with an end angle below its start, as rounded corner
doc=ezdxf.new('R2000'); doc.header['$INSUNITS']=0; m=doc.modelspace()
m.add_line((10,0),(90,0)); m.add_arc((90,10),10,270,0); m.add_line((100,10),(100,50)); m.add_line((100,50),(0,50)); m.add_line((0,50),(0,10)); m.add_arc((10,10),10,180,270)
save(doc,'corners-r2000')
# bow tie
doc=ezdxf.new('R2000'); doc.header['$INSUNITS']=0; m=doc.modelspace()
m.add_lwpolyline([(0,0),(100,100),(100,0),(0,100)],close=True); save(doc,'bow-tie-r2000')
doc=ezdxf.new('R2000'); doc.header['$INSUNITS']=0; m=doc.modelspace()
m.add_line((0,0),(100,0)); m.add_line((100,0),(100,60)); m.add_line((100,60),(0,60)); m.add_line((0,60),(0,0.2)); save(doc,'open-r2000')
