"""One unit of work for each user's action: all of it is kept, or none of it."""

from datetime import datetime
from functools import cached_property

from sqlalchemy import Connection

from db.desk import Desk
from db.problems import StoreBug
from db.repositories.animals import AnimalBook
from db.repositories.arrivals import ArrivalBook
from db.repositories.batches import BatchBook
from db.repositories.bills import BillBook
from db.repositories.books import Books
from db.repositories.calendar import CalendarBook
from db.repositories.calls import CallBook
from db.repositories.cooler import CoolerBook
from db.repositories.counted import CountedBook
from db.repositories.counted_lines import CountedLineBook
from db.repositories.customers import CustomerBook
from db.repositories.extras import ExtrasBook
from db.repositories.findings import BlockBook
from db.repositories.freezing import FreezingBook
from db.repositories.hand_overs import HandOverBook
from db.repositories.ledger import LedgerBook
from db.repositories.lots import LotBook
from db.repositories.marks import MarkBook
from db.repositories.news import NewsBook
from db.repositories.orders import OrderBook
from db.repositories.own_figures import YieldBook
from db.repositories.packages import PackageBook
from db.repositories.papers import ChangeBook, PaperBook
from db.repositories.payments import PaymentBook
from db.repositories.people import People
from db.repositories.periods import PeriodBook
from db.repositories.rates import RateBook
from db.repositories.recipes import RecipeBook
from db.repositories.records import RecordBook
from db.repositories.reports import ReportBook
from db.repositories.scales import ScaleBook
from db.repositories.search import SearchBook
from db.repositories.shop import ShopBook
from db.repositories.trace import TraceBook
from db.repositories.usual import UsualBook
from db.repositories.waiting import WaitingBook
from db.repositories.weighings import WeighingBook
from db.repositories.weights_told import WeightsToldBook
from shared.shop.people import Person, Station


class Work:
    """What `store.work()` and `store.read()` hand out; not kept beyond its `with`, nor shared."""

    def __init__(
        self,
        connection: Connection,
        now: datetime,
        person: Person,
        station: Station,
        *,
        reading: bool,
    ) -> None:
        self._connection = connection
        self._desk = Desk(connection, now, person, station, reading)
        self.now = now
        self.person = person
        self.station = station
        self.committed = False

    def commit(self) -> None:
        """Keep everything done in this unit. Once only; without it all is rolled back."""
        if self._desk.reading:
            raise StoreBug("a unit opened for reading has nothing to commit")
        if self.committed:
            raise StoreBug("a unit of work is committed once")
        self._connection.commit()
        self.committed = True

    @cached_property
    def people(self) -> People:
        """Persons and stations."""
        return People(self._desk)

    @cached_property
    def shop(self) -> ShopBook:
        """The shop's details, words and settings."""
        return ShopBook(self._desk)

    @cached_property
    def customers(self) -> CustomerBook:
        """Customers and producers."""
        return CustomerBook(self._desk)

    @cached_property
    def lots(self) -> LotBook:
        """Bookings, and the question a lot puts to the planner."""
        return LotBook(self._desk)

    @cached_property
    def animals(self) -> AnimalBook:
        """Animals, their states, losses and measurements."""
        return AnimalBook(self._desk)

    @cached_property
    def weighings(self) -> WeighingBook:
        """Weights of animals."""
        return WeighingBook(self._desk)

    @cached_property
    def orders(self) -> OrderBook:
        """Cut orders, their changes and released sheets."""
        return OrderBook(self._desk)

    @cached_property
    def packages(self) -> PackageBook:
        """Packages made."""
        return PackageBook(self._desk)

    @cached_property
    def counted(self) -> CountedBook:
        """Packages wrapped by count."""
        return CountedBook(self._desk)

    @cached_property
    def counted_lines(self) -> CountedLineBook:
        """Lines weighed in a shop that counts, one by one or together."""
        return CountedLineBook(self._desk)

    @cached_property
    def rates(self) -> RateBook:
        """Rate cards."""
        return RateBook(self._desk)

    @cached_property
    def bills(self) -> BillBook:
        """Issued bills and credit notes."""
        return BillBook(self._desk)

    @cached_property
    def extras(self) -> ExtrasBook:
        """What is also on orders' next bills."""
        return ExtrasBook(self._desk)

    @cached_property
    def payments(self) -> PaymentBook:
        """Payments and balances."""
        return PaymentBook(self._desk)

    @cached_property
    def ledger(self) -> LedgerBook:
        """The journal, opening balances and the drawer."""
        return LedgerBook(self._desk)

    @cached_property
    def books(self) -> Books:
        """What the journal says: owed, held, taken, tax, income."""
        return Books(self._desk)

    @cached_property
    def periods(self) -> PeriodBook:
        """Closed periods."""
        return PeriodBook(self._desk)

    @cached_property
    def papers(self) -> PaperBook:
        """Kept papers."""
        return PaperBook(self._desk)

    @cached_property
    def changes(self) -> ChangeBook:
        """Who did what when."""
        return ChangeBook(self._desk)

    @cached_property
    def calls(self) -> CallBook:
        """Calls about orders, and who is to be rung."""
        return CallBook(self._desk)

    @cached_property
    def search(self) -> SearchBook:
        """One search over everything people ask for."""
        return SearchBook(self._desk)

    @cached_property
    def trace(self) -> TraceBook:
        """From a tag or a number to everything that is kept of it."""
        return TraceBook(self._desk)

    @cached_property
    def records(self) -> RecordBook:
        """The records the rules ask to be kept, to write out."""
        return RecordBook(self._desk)

    @cached_property
    def recipes(self) -> RecipeBook:
        """The shop's recipes."""
        return RecipeBook(self._desk)

    @cached_property
    def batches(self) -> BatchBook:
        """Batches in cure, smoke and the mixer."""
        return BatchBook(self._desk)

    @cached_property
    def calendar(self) -> CalendarBook:
        """Kill days: places, closed days, hooks, and overruled bookings."""
        return CalendarBook(self._desk)

    @cached_property
    def waiting(self) -> WaitingBook:
        """Who waits for a place."""
        return WaitingBook(self._desk)

    @cached_property
    def arrivals(self) -> ArrivalBook:
        """What was seen and said when an animal came, holds, and how it was dressed."""
        return ArrivalBook(self._desk)

    @cached_property
    def scales(self) -> ScaleBook:
        """The scales of the stations."""
        return ScaleBook(self._desk)

    @cached_property
    def news(self) -> NewsBook:
        """What owners must be told."""
        return NewsBook(self._desk)

    @cached_property
    def cooler(self) -> CoolerBook:
        """What hangs, hang wishes, temperatures, and measures for grading."""
        return CoolerBook(self._desk)

    @cached_property
    def block(self) -> BlockBook:
        """What the block ticks, reads and reports."""
        return BlockBook(self._desk)

    @cached_property
    def marks(self) -> MarkBook:
        """The plant's own marks for inspected goods."""
        return MarkBook(self._desk)

    @cached_property
    def freezing(self) -> FreezingBook:
        """Since when packages are in a freezer, and which orders are fetched fresh."""
        return FreezingBook(self._desk)

    @cached_property
    def weights_told(self) -> WeightsToldBook:
        """What owners were told their shares weigh."""
        return WeightsToldBook(self._desk)

    @cached_property
    def usual(self) -> UsualBook:
        """The shop's own usual lines, and how it cuts split sides."""
        return UsualBook(self._desk)

    @cached_property
    def yields(self) -> YieldBook:
        """What carcasses were to give and gave: the shop's own figures."""
        return YieldBook(self._desk)

    @cached_property
    def hand_overs(self) -> HandOverBook:
        """The boxes packages lie in, and what left the shop."""
        return HandOverBook(self._desk)

    @cached_property
    def reports(self) -> ReportBook:
        """What the Office's reports read."""
        return ReportBook(self._desk)
