"""The pure training model: values in, decisions out; standard library and numpy only."""
