"""A job whose segments stand in a spreadsheet: the demo's own fields, and a line of two segments."""

from __future__ import annotations

import re

from tests.support.demo import DEMO

_WHOLE = DEMO.read_text(encoding="utf-8")
_FIRST = _WHOLE[: _WHOLE.index("[[segments.curves]]")].replace("[[segments]]", "[segment]").replace("[segments.", "[segment.")
HEAD = re.sub(r'^name = "Marl.*\nbegin = .*\nend = .*\n', "", _FIRST, flags=re.MULTILINE)
"""A job file without segments; `[segment]` holds what all of them share."""
NAME = "Quillback Subdivision relay, invented example"
LINE = "name,begin [mi],end [mi],new.section\nA,0,1.5,115RE\nB,1.5,2,115RE\n"
"""Its segments as a CSV file."""
