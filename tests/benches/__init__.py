"""Benchmarks, by part: each figure beside a floor or a peer measured in the same run."""
