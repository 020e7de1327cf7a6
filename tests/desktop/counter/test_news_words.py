"""What the counter reads to an owner: the loss, its reason, what falls, what would work."""

from desktop.counter.news_words import news_words
from printing.words import Words
from shared.shop.news import LostLine, News

WORDS = Words(strict=True)


def news(**more: object) -> News:
    return News(1, 2, **{"kind": "part_gone", "species": "pork", "tag": "114", **more})  # pyright: ignore[reportArgumentType]


def test_a_part_its_lines_and_what_would_work() -> None:
    told = news_words(
        news(
            what="part.ham_centre",
            reason="abscess",
            lost=(LostLine(1, "whole_ham", "falls"), LostLine(2, "ham_steak", "less")),
            remedies=("Leave the ham out.",),
        ),
        WORDS,
    )
    assert "Tag 114" in told
    assert "(abscess): " in told
    assert f"no {WORDS.name('pork', 'cut.whole_ham')} any more; less" in told
    assert "less " + WORDS.name("pork", "cut.ham_steak") in told
    assert told.endswith("What works: Leave the ham out.")


def test_what_is_planned_now_is_told_and_what_is_still_planned_too() -> None:
    gone = news(what="part.ham_centre", lost=(LostLine(1, "whole_ham", "falls"),))
    waiting = news_words(gone, WORDS, planning=True)
    assert waiting.endswith("any more. What would work is being planned…")
    planned = news_words(gone, WORDS, ("Leave it out", "Take steaks"), planning=True)
    assert planned.endswith("What works: Leave it out · Take steaks")


def test_an_animal_condemned_whole() -> None:
    told = news_words(news(kind="condemned", reason="septicemia"), WORDS)
    assert told == "Tag 114, the whole animal condemned (septicemia)."


def test_a_part_the_block_reported_is_named_though_kept_by_its_bare_code() -> None:
    """The block kept "top_round" where the rail keeps "part.top_round"."""
    for what in ("ham_centre", "part.ham_centre"):
        assert news_words(news(what=what, reason="abscess"), WORDS) == (
            f"Tag 114, {WORDS.name('pork', 'part.ham_centre')} (abscess)."
        )
