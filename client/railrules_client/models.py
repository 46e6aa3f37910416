"""Requests, answers and quantities: the structs that operations take and give, named as in the OpenAPI document."""

from railrules_client._generated.models import *  # noqa: F403  the generated module says what is public
from railrules_client._generated.models import __all__  # noqa: F401  again
