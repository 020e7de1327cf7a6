"""What an owner is told when something of his animal is lost, and what would work, in words."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

if TYPE_CHECKING:
    from printing.words import Words
    from shared.shop.news import News


def news_words(news: "News", words: "Words") -> str:
    """What is lost, why, which choices fall or give less, and what would work."""
    what = words.name(news.species, news.what) if news.what else _whole(news)
    reason = f" ({news.reason})" if news.reason else ""
    head = QCoreApplication.translate("News", "Tag {tag}, {what}").format(tag=news.tag, what=what)
    falls = QCoreApplication.translate("News", "{cut} falls")
    less = QCoreApplication.translate("News", "less {cut}")
    lost = ", ".join(
        (falls if one.how == "falls" else less).format(
            cut=words.name(news.species, f"cut.{one.cut}")
        )
        for one in news.lost
    )
    told = f"{head}{reason}: {lost}." if lost else f"{head}{reason}."
    if news.remedies:
        works = QCoreApplication.translate("News", "What works: {ways}")
        told += " " + works.format(ways=" · ".join(news.remedies))
    return told


def _whole(news: "News") -> str:
    if news.kind == "condemned":
        return QCoreApplication.translate("News", "the whole animal condemned")
    if news.kind == "refused":
        return QCoreApplication.translate("News", "the animal refused at the pen")
    if news.kind == "block":
        return QCoreApplication.translate("News", "the block reports")
    return QCoreApplication.translate("News", "held")
