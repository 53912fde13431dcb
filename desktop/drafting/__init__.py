"""Drafting: from wishes to a balanced program, by a small optimisation over the catalogue."""
