"""Typed client of the railrules service: rail relay quantities and welded rail checks, from a script or a notebook.

>>> from railrules_client import Client, models
>>> request = models.ThermalForceRequest(rail_temperature="130 degF", neutral_temperature="95 degF", section="136RE")
>>> with Client.in_process() as client:  # or Client("http://...")
...     answer = client.thermal.force(request)
>>> answer.rule
'thermal.force'
"""

from railrules_client import models
from railrules_client._calls import CallOptions
from railrules_client._client import AsyncClient, Client
from railrules_client._errors import (
    BadRequestError,
    ConnectionFailedError,
    ForbiddenError,
    InProcessError,
    MethodNotAllowedError,
    NotAcceptableError,
    NotFoundError,
    ProblemError,
    RailrulesError,
    RefusedError,
    ServiceFailedError,
    TimedOutError,
    TooLargeError,
    TooManyRequestsError,
    UnauthorizedError,
    UnavailableError,
    UnreadableAnswerError,
    UnsupportedMediaTypeError,
)
from railrules_client._helpers import (
    celsius,
    celsius_change,
    degrees,
    fahrenheit,
    fahrenheit_change,
    feet,
    inches,
    kilograms,
    kilometres,
    kilonewtons,
    megapascals,
    metres,
    miles,
    millimetres,
    pounds,
    pounds_force,
    pounds_per_square_inch,
    quantity,
)
from railrules_client._observing import Exchange, Hook
from railrules_client._quantities import Measured, Quantity
from railrules_client._units import UnknownUnitError
from railrules_client._version import __version__

__all__ = [
    "AsyncClient",
    "BadRequestError",
    "CallOptions",
    "Client",
    "ConnectionFailedError",
    "Exchange",
    "ForbiddenError",
    "Hook",
    "InProcessError",
    "Measured",
    "MethodNotAllowedError",
    "NotAcceptableError",
    "NotFoundError",
    "ProblemError",
    "Quantity",
    "RailrulesError",
    "RefusedError",
    "ServiceFailedError",
    "TimedOutError",
    "TooLargeError",
    "TooManyRequestsError",
    "UnauthorizedError",
    "UnavailableError",
    "UnknownUnitError",
    "UnreadableAnswerError",
    "UnsupportedMediaTypeError",
    "__version__",
    "celsius",
    "celsius_change",
    "degrees",
    "fahrenheit",
    "fahrenheit_change",
    "feet",
    "inches",
    "kilograms",
    "kilometres",
    "kilonewtons",
    "megapascals",
    "metres",
    "miles",
    "millimetres",
    "models",
    "pounds",
    "pounds_force",
    "pounds_per_square_inch",
    "quantity",
]
