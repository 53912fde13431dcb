"""The demo scenario: invented people, programs and a winter of training."""
