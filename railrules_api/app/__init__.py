"""The outermost room: server process and command line."""
