"""Use cases: from the store and the training model to the answers that screens show."""
