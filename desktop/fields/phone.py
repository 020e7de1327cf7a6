"""The field for a phone number, kept as people say it."""

from desktop.fields.line import LineField
from shared.reading import Unread
from shared.shop.customers import phone_digits

_ALLOWED = set("0123456789+-(). /x")
FEWEST, MOST = 7, 20


def phone_text(text: str) -> str:
    """Ten digits, or 1 and ten, in groups: "5550100123" is "555-010-0123"; others as typed."""
    bare = text.strip()
    digits = phone_digits(bare)
    if bare.startswith("+") or "x" in bare:
        return bare
    if len(digits) == 11 and digits.startswith("1"):
        digits = digits[1:]
    if len(digits) == 10:
        return f"{digits[:3]}-{digits[3:6]}-{digits[6:]}"
    if len(digits) == 7:
        return f"{digits[:3]}-{digits[3:]}"
    return bare


class PhoneField(LineField[str]):
    """Takes a phone number of 7 to 20 digits, with + and an extension after x."""

    def _read(self, text: str) -> str | Unread:
        if not set(text.strip().casefold()) <= _ALLOWED:
            return Unread("not_a_number", text)
        if not FEWEST <= len(phone_digits(text)) <= MOST:
            return Unread("too_large", text)
        return phone_text(text)

    def _write(self, value: str) -> str:
        return phone_text(value)

    def _complaint(self, unread: Unread) -> str:
        if unread.code == "too_large":
            words = self.tr("A phone number has {fewest} to {most} digits; “{text}” has {found}.")
        else:
            words = self.tr("Steelyard reads phone numbers like 555-010-0123, not “{text}”.")
        return words.format(
            fewest=FEWEST, most=MOST, text=unread.text.strip(), found=len(phone_digits(unread.text))
        )
