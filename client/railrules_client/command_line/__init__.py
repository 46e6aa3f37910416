"""The command `railrules`: takeoff, check, compare, bulk, job, section, sections, rules, convert, completion."""
