"""A mail's link, read back by the standard library: escaping, lines, addresses, its length."""

from email import message_from_bytes, policy
from email.message import EmailMessage
from urllib.parse import parse_qs, unquote, urlsplit

import pytest
from hypothesis import given
from hypothesis import strategies as st

from printing.mail import MOST_LINK, addresses_in, mail

LONG = (
    "María Peña,\n\nSu res, orden 1 (Arete T-114 & T-115):\nSu parte pesa 220\u00a0lb en caliente; "
    "“según la tabla” — ¿más? 100 % + 5 = 105 #2\n\nCarnicería Ñandú"
)


def read(link: str) -> tuple[list[str], str, str]:
    """Addresses, subject and text of a link, as the URL's and the mail's own readers see them."""
    assert link.isascii()
    assert " " not in link
    parts = urlsplit(link)
    assert (parts.scheme, parts.netloc, parts.fragment) == ("mailto", "", "")
    fields = parse_qs(parts.query, strict_parsing=True, keep_blank_values=True)
    message = EmailMessage()
    message["To"] = ", ".join(unquote(one) for one in parts.path.split(","))
    message["Subject"] = fields["subject"][0]
    message.set_content(fields["body"][0])
    back = message_from_bytes(message.as_bytes(), policy=policy.default)
    to = [one.addr_spec for one in back["To"].addresses]
    return to, str(back["Subject"]), fields["body"][0]


def test_long_spanish_comes_back_letter_by_letter() -> None:
    written = mail(["maria@example.org"], "Carnicería Ñandú: su parte pesa 220\u00a0lb", [LONG])
    to, subject, body = read(written.link)
    assert to == ["maria@example.org"]
    assert subject == "Carnicería Ñandú: su parte pesa 220 lb"
    assert body == LONG.replace("\u00a0", " ").replace("\n", "\r\n")
    assert "%0D%0A%0D%0A" in written.link, "RFC 6068, section 5: lines end in %0D%0A"
    assert "%20" in written.link
    assert "+" not in written.link, "a plus sign is a space to some readers"
    assert not written.shortened


@pytest.mark.parametrize(
    ("typed", "found"),
    [
        ("ann+hogs@example.org", ("ann+hogs@example.org",)),
        ("ann@example.org; bo@example.com", ("ann@example.org", "bo@example.com")),
        ("Ann Ostby <ann@example.org>, ann@example.org", ("ann@example.org",)),
        ("o'neil_100%@example.org", ("o'neil_100%@example.org",)),
        ("peña@correo.example", ("peña@correo.example",)),
        ("ann at example", ()),
        ("ann@example.org?bcc=x@example.org", ()),
        ("ann?bcc=x@example.org", ("ann?bcc=x@example.org",)),
        ("", ()),
    ],
)
def test_addresses_are_read_and_come_back(typed: str, found: tuple[str, ...]) -> None:
    assert addresses_in(typed) == found
    if found:
        link = mail(found, "S", ["T"]).link
        assert [unquote(one) for one in urlsplit(link).path.split(",")] == list(found)
        assert link.count("?") == 1
        assert link.count("@") == len(found)


def test_a_subject_is_one_line_and_adds_no_field() -> None:
    link = mail(["ann@example.org"], "Weight\r\nBcc: all@example.org & more", ["T"]).link
    _, subject, body = read(link)
    assert subject == "Weight Bcc: all@example.org & more"
    assert body == "T"
    assert set(parse_qs(urlsplit(link).query)) == {"subject", "body"}


def test_a_text_too_long_for_a_link_gives_way_to_a_shorter_one_and_says_so() -> None:
    """Escaped, 900 Spanish letters like ñ take 5,400: the list of parts goes first."""
    written = mail(["ann@example.org"], "S", ["ñ" * 900, "corto"])
    assert written.shortened
    assert read(written.link)[2] == "corto"
    cut = mail(["ann@example.org"], "S", ["ñ" * 900, "á" * 600])
    assert cut.shortened
    assert MOST_LINK - 12 <= len(cut.link) <= MOST_LINK
    body = read(cut.link)[2]
    assert body == "á" * (len(body) - 1) + "…"


@given(
    st.text(st.characters(exclude_categories=["Cs", "Cc", "Zl", "Zp"]), max_size=300),
    st.text(st.characters(exclude_categories=["Cs", "Cc", "Zl", "Zp"]), max_size=300),
)
def test_any_two_lines_come_back_or_are_told_as_shortened(first: str, second: str) -> None:
    written = mail(["ann@example.org"], "Order 12", [f"{first}\n{second}"])
    assert len(written.link) <= MOST_LINK
    body = parse_qs(urlsplit(written.link).query, keep_blank_values=True)["body"][0]
    whole = f"{first}\n{second}".replace("\u00a0", " ")
    if written.shortened:
        assert whole.replace("\n", "\r\n").startswith(body[:-1].rstrip())
    else:
        assert body.split("\r\n") == whole.splitlines()
