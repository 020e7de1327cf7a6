"""Office, the place: bills, balances, rate cards and the shop's details."""

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QTabWidget, QWidget

from desktop.look.space import column
from desktop.office.account_dialog import AccountDialog
from desktop.office.balances_page import BalancesPage
from desktop.office.bills_page import BillsPage
from desktop.office.books_page import BooksPage
from desktop.office.figures_page import FiguresPage
from desktop.office.rates_page import RatesPage
from desktop.office.recipes_page import RecipesPage
from desktop.office.reports_page import ReportsPage
from desktop.office.shop_page import ShopPage
from desktop.office.usual_page import UsualPage
from desktop.places import Place

if TYPE_CHECKING:
    from desktop.bench import Bench, Target
    from shared.shop.lists import BillRow


class OfficePlace(Place):
    """Rates, bills and payments, statements, and the shop's own details."""

    key = "office"

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(bench, parent)
        self._make_pages(bench)
        for page in self._pages:
            self.tabs.addTab(page, "")
        column(self, gap=0).addWidget(self.tabs)
        for page in self._pages:
            if not isinstance(page, BalancesPage):
                page.said.connect(self.said)
                page.changed.connect(self.changed)
        self.tabs.currentChanged.connect(self._turned)
        self.balances.picked.connect(self._open_order)
        self.balances.bill_picked.connect(self._show_paper)
        self.bills.side.account.clicked.connect(self._open_account)
        self.retranslate()

    def _make_pages(self, bench: "Bench") -> None:
        self.tabs = QTabWidget(self)
        self.tabs.setUsesScrollButtons(False)
        self.bills = BillsPage(bench, self.tabs)
        self.balances = BalancesPage(bench, self.tabs)
        self.rates = RatesPage(bench, self.tabs)
        self.shop = ShopPage(bench, self.tabs)
        self.recipes = RecipesPage(bench, self.tabs)
        self.usual = UsualPage(bench, self.tabs)
        self.figures = FiguresPage(bench, self.tabs)
        self.books = BooksPage(bench, self.tabs)
        self.reports = ReportsPage(bench, self.tabs)
        self._pages = (
            self.bills,
            self.balances,
            self.rates,
            self.shop,
            self.recipes,
            self.usual,
            self.figures,
            self.books,
            self.reports,
        )

    def title(self) -> str:
        return self.tr("Office")

    def first_focus(self) -> QWidget:
        firsts = (
            self.bills.orders,
            self.balances.orders,
            self.rates.first_focus(),
            self.shop.name.line,
            self.recipes.first_focus(),
            self.usual.lines,
            self.figures.reports,
            self.books.which.editor,
            self.reports.which.editor,
        )
        return firsts[self.tabs.currentIndex()]

    def refresh(self) -> None:
        self._pages[self.tabs.currentIndex()].refresh()

    def open(self, what: "Target") -> None:
        if what.kind == "order":
            self._open_order(what.id)

    def retranslate(self) -> None:
        names = (
            self.tr("&1 Bills"),
            self.tr("&2 Balances"),
            self.tr("&3 Rates"),
            self.tr("&4 Shop"),
            self.tr("&5 Recipes"),
            self.tr("&6 Usual"),
            self.tr("&7 From the block"),
            self.tr("&8 Books"),
            self.tr("&9 Reports"),
        )
        for at, words in enumerate(names):
            self.tabs.setTabText(at, words)
        self.tabs.tabBar().setAccessibleName(self.tr("Parts of the office"))
        for page in self._pages:
            page.retranslate()

    def _turned(self, at: int) -> None:
        self._pages[at].refresh()
        self.first_focus().setFocus()

    def _open_order(self, order_id: int) -> None:
        self.tabs.setCurrentWidget(self.bills)
        self.bills.choose(order_id)

    def _open_account(self) -> None:
        billing = self.bills.billing
        if billing is not None and billing.customer is not None:
            who = billing.customer
            self.account = AccountDialog(self.bench, who.id, who.name, self)
            self.account.open()

    def _show_paper(self, row: "BillRow") -> None:
        with self.bench.store.read() as work:
            issued = work.bills.get(row.id)
        if issued is not None:
            self.bills.papers.show_kept(issued)
