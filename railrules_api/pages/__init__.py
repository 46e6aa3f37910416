"""Pages for people, served by the service with nothing from outside: front page, handbook, reference, problems."""
