"""The catalogue: everything in `data/`, read once, checked, in SI, frozen."""

from railrules_api.catalogue.catalogue import Catalogue
from railrules_api.catalogue.loading import load, load_rulebook
from railrules_api.catalogue.model import Item, Row, Source, Table, Value
from railrules_api.catalogue.reading import CatalogueError
from railrules_api.catalogue.rulebook import Default, Rulebook

__all__ = [
    "Catalogue",
    "CatalogueError",
    "Default",
    "Item",
    "Row",
    "Rulebook",
    "Source",
    "Table",
    "Value",
    "load",
    "load_rulebook",
]
