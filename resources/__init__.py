"""Data that ships with the program: exercises, limits, starter programs, icons, translations."""
