"""Sentences remember how they were made, and read as plain text."""

from __future__ import annotations

import errno
import os

from desktop.training.sentence import Case, enumerated, sentence, sentence_of, system_words


def test_a_sentence_reads_as_text_and_keeps_pattern_and_values() -> None:
    said = sentence("{count} days of {name}", count=3, name="Rowing")
    assert said == "3 days of Rowing"
    assert (said.pattern, said.values) == ("{count} days of {name}", {"count": 3, "name": "Rowing"})
    assert said.case is Case.AS_IT_IS


def test_a_sentence_is_begun_with_a_capital_or_written_small() -> None:
    said = sentence("{name} again", name="back Squat")
    assert said.begun() == "Back Squat again"
    assert said.small() == "back squat again"
    assert (said.begun().case, said.small().case) == (Case.CAPITAL, Case.SMALL)
    assert said.begun().pattern == said.small().pattern == said.pattern
    assert sentence("").begun() == ""


def test_parts_are_told_one_after_the_other() -> None:
    inner = sentence("{name}", name="squat")
    told = enumerated([inner, "push"])
    assert told == "squat, push"
    assert tuple(told.values.values()) == (inner, "push")
    assert enumerated([]) == ""


def test_an_error_says_its_sentence_where_it_was_raised_with_one() -> None:
    said = sentence("no {what}", what="room")
    assert sentence_of(ValueError(said)) is said
    assert sentence_of(ValueError("plain")) == "plain"
    assert sentence_of(ValueError(3)) == "3"
    assert sentence_of(ValueError()) == ""


def test_what_the_system_says_is_known_in_its_own_words() -> None:
    refusals = (errno.ENOSPC, errno.ENOENT, errno.EACCES, errno.EPERM, errno.EROFS, errno.EIO)
    if os.name == "posix":
        assert {os.strerror(each) for each in refusals} <= system_words()
    assert all(said.pattern == said and not said.values for said in system_words())
