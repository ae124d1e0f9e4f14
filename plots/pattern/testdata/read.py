"""Reads a DXF by ezdxf and prints what it found as JSON; lengths in the file's unit."""
import json
import sys

import ezdxf


def along(entity):
    """Points along a line or an arc, which ezdxf made of a bulge."""
    if entity.dxftype() == "LINE":
        a, b = entity.dxf.start, entity.dxf.end
        return [[a.x + (b.x - a.x) * i / 20, a.y + (b.y - a.y) * i / 20] for i in range(21)]
    return [[p.x, p.y] for p in entity.vertices(entity.angles(2001))]


doc = ezdxf.readfile(sys.argv[1])
audit = doc.audit()
space = doc.modelspace()
polylines = list(space.query("POLYLINE"))
print(json.dumps({
    "version": doc.dxfversion,
    "units": [doc.header.get("$INSUNITS"), doc.header.get("$MEASUREMENT")],
    "stock": [[[v.dxf.location.x, v.dxf.location.y] for v in p.vertices]
              for p in polylines if p.dxf.layer == "STOCK" and p.is_closed],
    "closed_elsewhere": sorted({p.dxf.layer for p in polylines if p.is_closed} - {"OUTLINE", "STOCK", "CHECK"}),
    "errors": [e.message for e in audit.errors] + [e.message for e in audit.fixes],
    "layers": sorted({e.dxf.layer for e in space} - {l.dxf.name for l in doc.layers}),
    "outline": [along(e) for p in polylines if p.dxf.layer == "OUTLINE" for e in p.virtual_entities()],
    "closed": [p.is_closed for p in polylines if p.dxf.layer == "OUTLINE"],
    "squares": [[[v.dxf.location.x, v.dxf.location.y] for v in p.vertices]
                for p in polylines if p.dxf.layer == "CHECK" and p.is_closed],
    "texts": [ezdxf.decode_dxf_unicode(t.dxf.text) for t in space.query("TEXT")],
    "points": [[p.dxf.location.x, p.dxf.location.y] for p in space.query("POINT")],
}))
