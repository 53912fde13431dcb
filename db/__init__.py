"""The store: peewee over SQLite, spoken to in frozen dataclasses."""
