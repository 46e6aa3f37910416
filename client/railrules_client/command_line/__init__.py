"""The command `railrules`: takeoff, check, compare, bulk, job, section, sections, rules, convert, completion."""

from railrules_client.command_line.running import main

__all__ = ["main"]
