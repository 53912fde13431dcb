"""The screens: one file for each screen or reusable widget."""
