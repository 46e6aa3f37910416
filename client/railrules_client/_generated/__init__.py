"""Made from the OpenAPI document; do not edit."""
