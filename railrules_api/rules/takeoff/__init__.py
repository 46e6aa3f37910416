"""The takeoff: a whole relay job, by the same rules that answer single questions."""
