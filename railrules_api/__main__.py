"""`python -m railrules_api` is the command `railrules-server`."""

from railrules_api.app.command_line import main

raise SystemExit(main())
