"""What an owner is told when something of his animal is lost, and what would work, in words."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

if TYPE_CHECKING:
    from collections.abc import Sequence

    from printing.words import Words
    from shared.shop.news import News


def news_words(
    news: "News", words: "Words", ways: "Sequence[str]" = (), *, planning: bool = False
) -> str:
    """What is lost, why, which choices fall or give less, and what would work.

    `ways` are planned for the order as it is now; what an earlier version kept is shown as kept.
    """
    part = news.what if not news.what or "." in news.what else f"part.{news.what}"  # kept so before
    what = words.name(news.species, part) if part else _whole(news)
    reason = f" ({news.reason})" if news.reason else ""
    if news.what == "state.not_come":
        return _not_come(news, words) + reason + "."
    head = QCoreApplication.translate("News", "Tag {tag}, {what}").format(tag=news.tag, what=what)
    falls = QCoreApplication.translate("News", "no {cut} any more")
    less = QCoreApplication.translate("News", "less {cut}")
    lost = "; ".join(
        (falls if one.how == "falls" else less).format(
            cut=words.name(news.species, f"cut.{one.cut}")
        )
        for one in news.lost
    )
    if news.kind == "age" and not lost:
        lost = QCoreApplication.translate("News", "what fell can be had again")
    told = f"{head}{reason}: {lost}." if lost else f"{head}{reason}."
    ways = news.remedies or ways
    if ways:
        works = QCoreApplication.translate("News", "What works: {ways}")
        told += " " + works.format(ways=" · ".join(ways))
    elif planning:
        told += " " + QCoreApplication.translate("News", "What would work is being planned…")
    return told


def _not_come(news: "News", words: "Words") -> str:
    """Of what wasn't brought nothing works but another day."""
    animal = words.name(news.species, f"species.{news.species}")
    return QCoreApplication.translate(
        "News", "The {animal} didn't come; another day can be offered"
    ).format(animal=animal)


def _whole(news: "News") -> str:
    if news.kind == "condemned":
        return QCoreApplication.translate("News", "the whole animal condemned")
    if news.kind == "refused":
        return QCoreApplication.translate("News", "the animal refused at the pen")
    if news.kind == "block":
        return QCoreApplication.translate("News", "the block reports")
    return QCoreApplication.translate("News", "held")
