"""The verbs of the command line, by noun; one function for each, named like it."""
