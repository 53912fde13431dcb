"""Reading free-text notes: what somebody scribbled after training, as proposed sets."""
