"""Drawings as text: no framework, no catalogue, only domain objects in and documents out."""
