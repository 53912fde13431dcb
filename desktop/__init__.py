"""The application around the screens: start, settings, paths, use cases, command line."""
