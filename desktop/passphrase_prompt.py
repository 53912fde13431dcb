"""Asking for a passphrase at the terminal. It is never an argument: those can be seen by others."""

from __future__ import annotations

import os
import sys
from collections.abc import Mapping
from getpass import getpass

PASSPHRASE = "RUNGWISE_PASSPHRASE"
NEW_PASSPHRASE = "RUNGWISE_NEW_PASSPHRASE"


def asked(
    question: str, variable: str = PASSPHRASE, environ: Mapping[str, str] = os.environ
) -> str:
    """The passphrase: what ``variable`` of the environment holds, else what is typed unseen; ""
    where nobody can be asked.
    """
    if variable in environ:
        return environ[variable]
    return getpass(f"{question}: ") if sys.stdin.isatty() else ""


def asked_twice(question: str, environ: Mapping[str, str] = os.environ) -> str:
    """A new passphrase, typed twice; "" where the two differ or nobody can be asked."""
    first = asked(question, NEW_PASSPHRASE, environ)
    if NEW_PASSPHRASE in environ or first == asked("Again", NEW_PASSPHRASE, environ):
        return first
    return ""
