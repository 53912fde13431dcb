"""Checks of published values, each with its source beside it."""
