"""A user's script with mistakes that the type checkers must find: one on every line marked so."""

from __future__ import annotations

from railrules_client import Client, models


def wrong(client: Client) -> None:
    """Make mistakes."""
    models.Length(39, "furlong")  # wrong: unit
    models.ThermalForceRequest(rail_temperature="130 degF")  # wrong: missing
    models.ThermalForceRequest(rail_temperature=models.Mass(1, "lb"), neutral_temperature="95 degF")  # wrong: kind
    models.Stretch(begin="0 ft", end="1 ft", rails="inner", ties=models.TieSetting())  # wrong: word
    client.rail_sections.get(136)  # wrong: argument
    client.rail_sections.list(units="metric")  # wrong: query
    client.rail_sections.get("136RE", timeout="long")  # wrong: option
    client.thermal.force(models.TieSetting())  # wrong: request
    client.thermal.no_such_thing()  # wrong: name
    models.Length(1, "ft").to("kg")  # wrong: conversion
