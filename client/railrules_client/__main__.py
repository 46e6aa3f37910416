"""`python -m railrules_client` is the command `railrules`."""

from railrules_client.command_line.running import main

raise SystemExit(main())
