"""Reads the DXF files that are named, or those on the lines of the standard input, by ezdxf, and prints what it found
as JSON, a line each; lengths in the file's unit."""
import json
import sys

import ezdxf


def along(entity):
    """Points along a line or an arc, which ezdxf made of a bulge."""
    if entity.dxftype() == "LINE":
        a, b = entity.dxf.start, entity.dxf.end
        return [[a.x + (b.x - a.x) * i / 20, a.y + (b.y - a.y) * i / 20] for i in range(21)]
    return [[p.x, p.y] for p in entity.vertices(entity.angles(401))]


def corners(polyline):
    return [[v.dxf.location.x, v.dxf.location.y] for v in polyline.vertices]


def read(path):
    doc = ezdxf.readfile(path)
    audit = doc.audit()
    space = doc.modelspace()
    polylines = list(space.query("POLYLINE"))
    outlines = [[along(e) for e in p.virtual_entities()] for p in polylines if p.dxf.layer == "OUTLINE"]
    return {
        "version": doc.dxfversion,
        "units": [doc.header.get("$INSUNITS"), doc.header.get("$MEASUREMENT")],
        "stock": [corners(p) for p in polylines if p.dxf.layer == "STOCK" and p.is_closed],
        "closed_elsewhere": sorted({p.dxf.layer for p in polylines if p.is_closed} - {"OUTLINE", "STOCK", "CHECK"}),
        "errors": [e.message for e in audit.errors] + [e.message for e in audit.fixes],
        "layers": sorted({e.dxf.layer for e in space} - {l.dxf.name for l in doc.layers}),
        "parts": outlines,
        "straight": [[e.dxftype() == "LINE" for e in p.virtual_entities()] for p in polylines if p.dxf.layer == "OUTLINE"],
        "outline": [stroke for part in outlines for stroke in part],
        "closed": [p.is_closed for p in polylines if p.dxf.layer == "OUTLINE"],
        "squares": [corners(p) for p in polylines if p.dxf.layer == "CHECK" and p.is_closed],
        "texts": [ezdxf.decode_dxf_unicode(t.dxf.text) for t in space.query("TEXT")],
        "points": [[p.dxf.location.x, p.dxf.location.y] for p in space.query("POINT")],
    }


for each in sys.argv[1:] or map(str.strip, sys.stdin):
    print(json.dumps(read(each)), flush=True)
