"""The corpus of notes and what is measured on it."""
