"""A rail section as a DXF R12 drawing, in millimetres, for CAD programs."""

from __future__ import annotations

import io
import math
import re
from typing import TYPE_CHECKING

from railrules_api.domain.profile.elements import Arc

if TYPE_CHECKING:
    from railrules_api.domain.profile.outline import Outline

MILLIMETRES = 1000.0
_WHEN = re.compile(r"(?<=\$TDCREATE\n 40\n)[\d.]+|(?<=\$TDUPDATE\n 40\n)[\d.]+| @ \d{4}-\d\d-\d\dT\S+")
"""Every place of the document that tells when it was written: the same section must give the same bytes."""


def profile_dxf(outline: Outline, layer: str, worn: Outline | None = None) -> str:
    """Return the outline as lines and true arcs, one unit a millimetre, the origin in the middle of the base.

    Args:
        outline: the new outline.
        layer: name of the layer, e.g. the section's id.
        worn: a worn outline, on a layer of its own.

    Returns:
        The DXF document as text.

    Raises:
        ImportError: the library that writes DXF is not installed.
    """
    from ezdxf.document import Drawing  # noqa: PLC0415  (optional: only those who ask for DXF need it)

    document = Drawing.new("R12")
    space = document.modelspace()
    for section, name, colour in ((outline, layer, 7), (worn, f"{layer}-WORN", 1)):
        if section is None:
            continue
        document.layers.add(name, color=colour)
        for element in section.elements:
            if isinstance(element, Arc):
                first = math.degrees(element.first_angle)
                last = first + math.degrees(element.sweep)
                # DXF knows arcs counter-clockwise only.
                begin, end = (first, last) if element.sweep > 0 else (last, first)
                space.add_arc(
                    (element.centre[0] * MILLIMETRES, element.centre[1] * MILLIMETRES),
                    element.radius * MILLIMETRES,
                    begin % 360,
                    end % 360,
                    dxfattribs={"layer": name},
                )
            else:
                space.add_line(
                    (element.start[0] * MILLIMETRES, element.start[1] * MILLIMETRES),
                    (element.end[0] * MILLIMETRES, element.end[1] * MILLIMETRES),
                    dxfattribs={"layer": name},
                )
    stream = io.StringIO()
    document.write(stream)
    return _WHEN.sub(lambda found: "" if found.group().startswith(" @") else "0.0", stream.getvalue())
