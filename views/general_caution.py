"""The general caution, in one place: for whom the program is, and when to stop."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

translate = QCoreApplication.translate


def general_caution() -> str:
    """For whom targets are meant; screens that prescribe say it once. Common practice."""
    return translate(
        "GeneralCaution",
        "Training can hurt. Targets are for healthy people; those with a condition, pregnancy, "
        "recent injury or surgery, or a yes in a health screening need clearance from a licensed "
        "professional. Local rules and licensed practice come first.",
    )


def red_flags() -> str:
    """When to stop at once. Common practice."""
    return translate(
        "GeneralCaution",
        "Chest pain, fainting, sudden severe pain or numbness: stop and seek medical help.",
    )
