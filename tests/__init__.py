"""The tests: real parts, sentences for names, sources beside published values."""
