"""Section rules: properties of whole and worn rails."""
