"""The parts of the fault tests: each does harm many times and says what became of the data."""
