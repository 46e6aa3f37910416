"""Rail sections from their true geometry: outlines of lines and arcs, exact properties, wear, torsion, drawing data."""
