"""Entry fields: a label, what is typed, and the complaint below it in words."""

from desktop.fields.choice import ChoiceField
from desktop.fields.count import CountField
from desktop.fields.date import DateField
from desktop.fields.field import Field
from desktop.fields.form_dialog import FormDialog
from desktop.fields.grid import FieldGrid
from desktop.fields.length import LengthField
from desktop.fields.money import MoneyField, RateField
from desktop.fields.phone import PhoneField
from desktop.fields.text import NoteField, TextField
from desktop.fields.weight import WeightField

__all__ = [
    "ChoiceField",
    "CountField",
    "DateField",
    "Field",
    "FieldGrid",
    "FormDialog",
    "LengthField",
    "MoneyField",
    "NoteField",
    "PhoneField",
    "RateField",
    "TextField",
    "WeightField",
]
