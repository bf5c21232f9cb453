"""Reads a STEP file with gmsh's native kernel and prints its volume, box and number of solids as JSON."""
import json
import sys

import gmsh

gmsh.initialize()
gmsh.option.setNumber("General.Terminal", 0)
gmsh.option.setString("Geometry.OCCTargetUnit", "MM")
gmsh.open(sys.argv[1])
solids = gmsh.model.getEntities(3)
volume = sum(gmsh.model.occ.getMass(3, tag) for _, tag in solids)
print(json.dumps({"solids": len(solids), "volume": volume}))
gmsh.finalize()
