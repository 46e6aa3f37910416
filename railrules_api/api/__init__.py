"""The HTTP edge: wire schemas, binding of requests, problems, operations and their document."""
