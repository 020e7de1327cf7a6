"""What is kept of news: the same text for the same news."""

import json

from shared.shop.news import LostLine, News, told_text


def test_the_text_holds_what_is_lost_and_the_remedies() -> None:
    news = News(1, 2, "part_gone", "pork", "114", "ham", "abscess", (LostLine(3, "ham", "falls"),))
    assert json.loads(told_text(news)) == {
        "what": "ham",
        "reason": "abscess",
        "lost": [[3, "ham", "falls"]],
        "remedies": [],
    }
