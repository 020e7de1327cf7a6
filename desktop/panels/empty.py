"""What stands where a list has nothing yet: what this is for, and the key that begins it."""

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QSizePolicy, QWidget

from desktop.look.space import EDGE, GROUP, TOGETHER, column, row
from desktop.panels.heading import Words

MEASURE = 560


class EmptyState(QWidget):
    """A heading, a sentence or two that teach, and at most two ways to begin."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.heading = Words("group", parent=self).wrapped()
        self.sentence = Words("body", "quiet", self).wrapped()
        self._actions = QHBoxLayout()
        self._actions.setSpacing(TOGETHER)
        self._actions.addStretch(1)
        block = QWidget(self)
        block.setFixedWidth(MEASURE)
        across = row(self, edge=EDGE)
        across.addStretch(1)
        across.addWidget(block)
        across.addStretch(1)
        layout = column(block, gap=TOGETHER)
        layout.addStretch(2)
        layout.addWidget(self.heading)
        layout.addWidget(self.sentence)
        layout.addSpacing(GROUP - TOGETHER)
        layout.addLayout(self._actions)
        layout.addStretch(3)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    def set_words(self, heading: str, sentence: str) -> None:
        """What this is for, and how it begins."""
        self.heading.setText(heading)
        self.sentence.setText(sentence)
        self.setAccessibleName(heading)
        self.setAccessibleDescription(sentence)

    def add_action(self, action: QPushButton) -> None:
        """A way to begin; the first one is the usual one."""
        action.setParent(self.heading.parentWidget())
        self._actions.insertWidget(self._actions.count() - 1, action)
        action.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        self._actions.setAlignment(action, Qt.AlignmentFlag.AlignLeft)
