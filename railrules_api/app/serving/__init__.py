"""The server process: sockets, workers, limits, keys, logs and metrics around the application."""
