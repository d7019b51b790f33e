package cornerbook.app.door;

import cornerbook.app.book.Book;
import cornerbook.app.desk.CarLists;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Learning;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.Problems;
import cornerbook.app.desk.Room;
import cornerbook.app.desk.bench.BenchHandler;
import cornerbook.app.desk.bill.BillHandler;
import cornerbook.app.desk.burnish.BurnishHandler;
import cornerbook.app.desk.car.CarDataHandler;
import cornerbook.app.desk.car.KindFormHandler;
import cornerbook.app.desk.car.NewCarHandler;
import cornerbook.app.desk.car.VehicleHandler;
import cornerbook.app.desk.cars.CarListHandler;
import cornerbook.app.desk.coming.ComingHandler;
import cornerbook.app.desk.coming.ComingMailHandler;
import cornerbook.app.desk.customer.CardHandler;
import cornerbook.app.desk.customer.ContactHandler;
import cornerbook.app.desk.customer.CustomerHandler;
import cornerbook.app.desk.days.AppointmentHandler;
import cornerbook.app.desk.days.AskDayHandler;
import cornerbook.app.desk.days.DaysHandler;
import cornerbook.app.desk.days.PlanRoom;
import cornerbook.app.desk.estimate.EstimateHandler;
import cornerbook.app.desk.findings.FindingsHandler;
import cornerbook.app.desk.knowledge.OthersHandler;
import cornerbook.app.desk.link.CarLinks;
import cornerbook.app.desk.link.CustomerLinks;
import cornerbook.app.desk.link.DayLinks;
import cornerbook.app.desk.link.MoneyLinks;
import cornerbook.app.desk.link.ShopLinks;
import cornerbook.app.desk.link.StoreLinks;
import cornerbook.app.desk.order.OrderListHandler;
import cornerbook.app.desk.out.OutRoom;
import cornerbook.app.desk.plan.PlanHandler;
import cornerbook.app.desk.price.PricesHandler;
import cornerbook.app.desk.shop.ClimateHandler;
import cornerbook.app.desk.shop.HoursHandler;
import cornerbook.app.desk.shop.KindsHandler;
import cornerbook.app.desk.shop.MailServerHandler;
import cornerbook.app.desk.shop.OrderHandler;
import cornerbook.app.desk.shop.RereadHandler;
import cornerbook.app.desk.shop.ShopHandler;
import cornerbook.app.desk.store.BringHandler;
import cornerbook.app.desk.store.CountHandler;
import cornerbook.app.desk.store.FetchHandler;
import cornerbook.app.desk.store.LeftHandler;
import cornerbook.app.desk.store.ScanHandler;
import cornerbook.app.desk.store.SetHandler;
import cornerbook.app.desk.store.StoreHandler;
import cornerbook.app.desk.today.TodayHandler;
import cornerbook.app.desk.tools.ToolsHandler;
import cornerbook.app.desk.visit.EntryHandler;
import cornerbook.app.desk.visit.NewVisitHandler;
import cornerbook.app.desk.visit.VisitDataHandler;
import cornerbook.app.desk.wheel.WheelHandler;
import cornerbook.app.desk.year.Behind;
import cornerbook.app.desk.year.BehindHandler;
import cornerbook.app.desk.year.YearHandler;
import cornerbook.app.request.Told;
import cornerbook.app.sheet.Letterhead;
import cornerbook.core.assess.Assessor;
import io.helidon.webserver.http.HttpRouting;
import java.time.Clock;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** The running web server. It listens on loopback only, unless its door is open to the shop's network. */
public final class CornerbookServer {
    private final Listeners listeners;
    private final Refusals refusals;
    private final Learning learning;
    private final CarLists lists;
    private final List<Room> rooms;
    private final FirstSheet firstSheet;

    private CornerbookServer(
            Listeners listeners,
            Refusals refusals,
            Learning learning,
            CarLists lists,
            List<Room> rooms,
            FirstSheet firstSheet) {
        this.listeners = listeners;
        this.refusals = refusals;
        this.learning = learning;
        this.lists = lists;
        this.rooms = rooms;
        this.firstSheet = firstSheet;
    }

    /**
     * Serves the book until it is stopped.
     *
     * @param port 0 takes any free one
     * @param clock says what day it is
     * @param letterhead stands on top of each handover sheet
     * @param rooms are opened beside the server's own pages
     * @throws DoorException with one sentence when the port is in use
     */
    public static CornerbookServer start(
            Book book, Assessor assessor, int port, Clock clock, Letterhead letterhead, Room... rooms) {
        return start(book, assessor, Door.local(port), clock, letterhead, rooms);
    }

    /**
     * The same where its door is.
     *
     * @param others are opened beside the server's own
     */
    public static CornerbookServer start(
            Book book, Assessor assessor, Door door, Clock clock, Letterhead letterhead, Room... others) {
        var rooms = Stream.concat(Stream.of(new OutRoom(book, clock), new PlanRoom(book)), Stream.of(others))
                .toList();
        var pages = new Pages();
        var learning = new Learning(book, assessor, clock);
        var lists = new CarLists(book, learning, clock);
        var desk = new Desk(book, learning, lists, clock);
        var connections = Listeners.bounded(door, Clock.systemUTC());
        var refusals = new Refusals(Clock.systemUTC());
        var pairing = new Pairing(desk.book().devices(), desk.clock(), refusals);
        var guard = new RequestGuard(door, pairing, connections, refusals);
        var firstSheet = new FirstSheet(new FindingsHandler(desk, pages, letterhead)::latestSheet);
        Consumer<HttpRouting.Builder> routes = routing -> {
            routing.addFilter(guard);
            routing.addFilter((chain, request, response) -> {
                chain.proceed();
                firstSheet.pageAnswered();
            });
            for (var room : rooms) {
                room.open(routing, desk, pages);
            }
            route(routing, pages, desk, letterhead, door, pairing, refusals, rooms);
        };
        var certificate = door.certificates();
        Consumer<HttpRouting.Builder> certificates =
                certificate == null ? routing -> {} : new CertificateHandler(pages, door, certificate)::route;
        var listeners = new Listeners(door, routes, certificates, connections);
        lists.start();
        return new CornerbookServer(listeners, refusals, learning, lists, rooms, firstSheet);
    }

    /** Gets ready what needs no book, beside who opens the book: a start has two processors and waits for one. */
    public static void prepareMeanwhile() {
        Thread.ofPlatform().daemon().name("prepare").start(Listeners::prepare);
    }

    public int port() {
        return listeners.port();
    }

    /** Learns from the book in the background, when that was never done. */
    public void learnIfNew() {
        learning.learnIfNew();
    }

    /** Draws a sheet to nowhere when the first page has been answered, so that the first that somebody wants is not the first. */
    public void drawAhead() {
        firstSheet.start();
    }

    /** Returns when the last page is answered and nothing is being learned any more. */
    public void stop() {
        firstSheet.close();
        rooms.forEach(Room::close);
        listeners.close();
        refusals.close();
        learning.close();
        lists.close();
    }

    private static void route(
            HttpRouting.Builder routing,
            Pages pages,
            Desk desk,
            Letterhead letterhead,
            Door door,
            Pairing pairing,
            Refusals refusals,
            List<Room> rooms) {
        var calendar = new CalendarHandler(desk, refusals);
        var agree = new AgreeHandler(desk, pages, refusals, letterhead.shopName());
        var pick = new PickHandler(desk, pages, refusals, letterhead.shopName());
        var askDay = new AskDayHandler(desk, pages, letterhead, door::publicAddress);
        var bill = new BillHandler(desk, pages, letterhead);
        var estimate = new EstimateHandler(desk, pages, letterhead, door::publicAddress);
        var today = new TodayHandler(desk, pages);
        var days = new DaysHandler(desk, pages);
        var appointment = new AppointmentHandler(desk, pages);
        var vehicle = new VehicleHandler(desk, pages);
        var carData = new CarDataHandler(desk, pages);
        var newCar = new NewCarHandler(desk, pages);
        var carList = new CarListHandler(desk, pages);
        var newVisit = new NewVisitHandler(desk, pages);
        var entry = new EntryHandler(desk, pages);
        var visitData = new VisitDataHandler(desk, pages);
        var findings = new FindingsHandler(desk, pages, letterhead);
        var plan = new PlanHandler(desk, pages);
        var bench = new BenchHandler(desk, pages);
        var tools = new ToolsHandler(desk, pages);
        var shop = new ShopHandler(desk, pages, letterhead);
        var stepOrder = new OrderHandler(desk, pages);
        var orderList = new OrderListHandler(desk, pages, letterhead);
        var year = new YearHandler(desk, pages);
        var behind = new BehindHandler(desk, pages);
        for (var list : Behind.values()) {
            routing.get(ShopLinks.behind(list.address()), (request, response) -> behind.show(list, request, response))
                    .get(
                            ShopLinks.behind(list.address()) + ".csv",
                            (request, response) -> behind.sendCsv(list, request, response));
        }
        var coming = new ComingHandler(desk, pages, letterhead);
        var comingMail = new ComingMailHandler(desk, pages, letterhead);
        var mailServer = new MailServerHandler(desk, pages);
        var prices = new PricesHandler(desk, pages);
        var kinds = new KindsHandler(desk, pages);
        var kindForm = new KindFormHandler(desk, pages);
        var store = new StoreHandler(desk, pages);
        var scan = new ScanHandler(desk, pages);
        var fetch = new FetchHandler(desk, pages);
        var left = new LeftHandler(desk, pages);
        var bring = new BringHandler(desk, pages);
        var storedSet = new SetHandler(desk, pages, letterhead);
        var count = new CountHandler(desk, pages);
        var hours = new HoursHandler(desk, pages, door::publicAddress);
        var others = new OthersHandler(desk, pages);
        var climate = new ClimateHandler(desk, pages);
        var reread = new RereadHandler(desk, pages);
        var customer = new CustomerHandler(desk, pages, letterhead);
        var contact = new ContactHandler(desk, customer);
        var cards = new CardHandler(desk, pages);
        var burnish = new BurnishHandler(desk, pages);
        var wheel = new WheelHandler(desk, pages);
        var person = new PersonHandler(desk, pairing);
        var devices = new PairingHandler(desk, pages, pairing, door, rooms);
        routing.get("/", today::show)
                .get("/judged-cars", today::showJudged)
                .get("/assets/{digest}/{name}", pages::sendAsset)
                .post("/preferences", person::prefer)
                .post("/person", person::takeOver)
                .get(DayLinks.days(), days::show)
                .get(DayLinks.weeks(), days::showWeeks)
                .get(HoursHandler.PAGE, hours::show)
                .post(HoursHandler.PAGE, hours::save)
                .post(HoursHandler.PAGE + "/close", hours::close)
                .post(HoursHandler.PAGE + "/open", hours::open)
                .post(HoursHandler.PAGE + "/away", hours::away)
                .post(HoursHandler.PAGE + "/back", hours::back)
                .post(HoursHandler.PAGE + "/calendar", hours::makeCalendar)
                .post(HoursHandler.PAGE + "/calendar/withdraw", hours::withdrawCalendar)
                .get(DayLinks.CALENDAR + "{file}", calendar::show)
                .get(DayLinks.newAppointment(), appointment::showNew)
                .post(DayLinks.appointments(), appointment::make)
                .get(DayLinks.appointments() + "/{id}", appointment::show)
                .post(DayLinks.appointments() + "/{id}", appointment::change)
                .post(DayLinks.appointments() + "/{id}/state", appointment::say)
                .get("/bench", bench::list)
                .get("/shop", shop::show)
                .post("/shop/rules", shop::save)
                .get(ShopLinks.stepOrder(), stepOrder::show)
                .post(ShopLinks.stepOrder(), stepOrder::save)
                .get(ShopLinks.year(), year::show)
                .get(ShopLinks.year() + "/months.csv", year::sendMonths)
                .get(ShopLinks.year() + "/not-seen.csv", year::sendNotSeen)
                .get(ShopLinks.year() + "/declined.csv", year::sendDeclined)
                .get(ShopLinks.year() + "/pads", year::showPads)
                .get(ShopLinks.year() + "/pads.csv", year::sendPads)
                .get(CustomerLinks.coming(), coming::show)
                .post(CustomerLinks.coming() + "/answer", coming::answer)
                .post(CustomerLinks.coming() + "/agree", coming::agree)
                .get(CustomerLinks.comingMail(), comingMail::show)
                .post(CustomerLinks.comingMail(), comingMail::send)
                .get(CustomerLinks.sentMail(), comingMail::showSent)
                .post(CustomerLinks.sentMail(), comingMail::sendAgain)
                .get(ShopLinks.mailServer(), mailServer::show)
                .post(ShopLinks.mailServer(), mailServer::save)
                .post(ShopLinks.mailServer() + "/remove", mailServer::remove)
                .get(ShopLinks.order(), orderList::show)
                .post(ShopLinks.order(), orderList::order)
                .get(ShopLinks.order() + ".csv", orderList::sendCsv)
                .get(ShopLinks.order() + "/article", orderList::showArticle)
                .post(ShopLinks.order() + "/level", orderList::keepLevel)
                .post(ShopLinks.order() + "/event", orderList::record)
                .post(ShopLinks.order() + "/give", orderList::give)
                .post(ShopLinks.order() + "/answer", orderList::answer)
                .get(StoreLinks.store(), store::show)
                .post(StoreLinks.store(), store::save)
                .get(StoreLinks.store() + "/rack", store::showRack)
                .post(StoreLinks.store() + "/down", store::takeDown)
                .get(StoreLinks.store() + "/labels.pdf", store::sendLabels)
                .get(StoreLinks.fetch(), fetch::show)
                .get(StoreLinks.bring(), bring::show)
                .post(StoreLinks.bring(), bring::say)
                .get(StoreLinks.bring() + ".csv", bring::sendCsv)
                .post(StoreLinks.storeRoom(), bring::sayRoom)
                .get(StoreLinks.storedSet(), storedSet::show)
                .post(StoreLinks.storedSet(), storedSet::takeIn)
                .post(StoreLinks.storedSet() + "/term", storedSet::agree)
                .post(StoreLinks.photosOfSet(), storedSet::addPhoto)
                .get(StoreLinks.store() + "/receipt.pdf", storedSet::sendReceipt)
                .get(StoreLinks.left(), left::show)
                .post(StoreLinks.left(), left::answer)
                .get(StoreLinks.store() + ".csv", left::sendCsv)
                .get(StoreLinks.count(), count::show)
                .post(StoreLinks.count(), count::begin)
                .post(StoreLinks.count() + "/scan", count::scan)
                .post(StoreLinks.count() + "/end", count::end)
                .post(StoreLinks.count() + "/answer", count::answer)
                .get(StoreLinks.scan(), scan::show)
                .post(StoreLinks.scan(), scan::scan)
                .get(MoneyLinks.prices(), prices::show)
                .post(MoneyLinks.prices() + "/place", prices::savePlace)
                .post(MoneyLinks.prices() + "/work", prices::saveWork)
                .post(MoneyLinks.prices() + "/tyre", prices::saveTyre)
                .post(MoneyLinks.prices() + "/part", prices::savePart)
                .get(ShopLinks.kinds(), kinds::show)
                .post(ShopLinks.kinds(), kinds::save)
                .get(ShopLinks.kindForm(), kindForm::show)
                .post(ShopLinks.kindForm(), kindForm::save)
                .get(ShopLinks.kinds() + "/file", kinds::sendFile)
                .post(ShopLinks.kinds() + "/remove", kinds::remove)
                .get("/shop/tools", tools::show)
                .post("/shop/tools", tools::save)
                .post("/shop/tools/remove", tools::remove)
                .get(RereadHandler.PAGE, reread::show)
                .get(ShopLinks.othersKnowledge(), others::show)
                .post(ShopLinks.othersKnowledge(), others::look)
                .post(ShopLinks.othersKnowledge() + "/take", others::take)
                .post(ShopLinks.othersKnowledge() + "/take-back", others::takeBack)
                .post(ShopLinks.othersKnowledge() + "/trust", others::trust)
                .post(ShopLinks.othersKnowledge() + "/distrust", others::distrust)
                .get(ClimateHandler.PAGE, climate::show)
                .post(ClimateHandler.PAGE, climate::save)
                .post(ClimateHandler.PAGE + "/remove", climate::remove)
                .get(CarLinks.carList(), carList::show)
                .post(CarLinks.carList(), carList::look)
                .post(CarLinks.carList() + "/add", carList::add)
                .get(CustomerLinks.goneCustomers(), customer::listGone)
                .get(CustomerLinks.cards(), cards::show)
                .post(CustomerLinks.cards(), cards::look)
                .post(CustomerLinks.cards() + "/take", cards::take)
                .get("/customers/{id}", customer::show)
                .get("/customers/{id}/file", customer::sendFile)
                .post("/customers/{id}/erase", customer::erase)
                .post("/customers/{id}/contact", contact::save)
                .get("/bench/{name}", bench::show)
                .get("/cars/new", newCar::show)
                .post("/cars/new", newCar::save)
                .get("/cars/{id}/data", carData::show)
                .post("/cars/{id}/data", carData::save)
                .get("/cars/{id}", vehicle::show)
                .get("/cars/{id}/visits/new", newVisit::show)
                .post("/cars/{id}/visits/new", newVisit::save)
                .get("/visits/{id}", entry::show)
                .post("/visits/{id}", entry::saveReadings)
                .post("/visits/{id}/leaving", entry::saveLeaving)
                .post("/visits/{id}/retorque", entry::saveRetorque)
                .post("/visits/{id}/retorque/answer", today::saveAnswer)
                .post("/visits/{id}/retorque/confirmed", today::confirmRetorque)
                .get("/visits/{id}/data", visitData::show)
                .post("/visits/{id}/data", visitData::save)
                .post("/visits/{id}/move", visitData::move)
                .post("/visits/{id}/cancel", visitData::cancel)
                .post("/visits/{id}/restore", visitData::restore)
                .get("/visits/{id}/findings", findings::show)
                .post("/visits/{id}/photos/{photo}", findings::choosePhoto)
                .post("/visits/{id}/declined", findings::decline)
                .get("/visits/{id}/estimate", estimate::show)
                .post("/visits/{id}/estimate", estimate::keep)
                .post("/visits/{id}/estimate/work", estimate::offer)
                .get("/visits/{id}/estimate.pdf", estimate::sendPdf)
                .post("/visits/{id}/estimate/link", estimate::makeLink)
                .get("/visits/{id}/bill", bill::show)
                .post("/visits/{id}/bill", bill::make)
                .post("/visits/{id}/bill/paid", bill::pay)
                .post("/visits/{id}/bill/credit", bill::credit)
                .get(MoneyLinks.bills(), bill::list)
                .get(MoneyLinks.bills() + "/{number}.pdf", bill::sendPdf)
                .get(MoneyLinks.bills() + "/{number}.xml", bill::sendXml)
                .get("/visits/{id}/agree", estimate::showAgree)
                .post("/visits/{id}/agree", estimate::agree)
                .get(MoneyLinks.AGREE + "{secret}", agree::show)
                .get(DayLinks.PICK + "{secret}", pick::show)
                .post(DayLinks.PICK + "{secret}", pick::take)
                .post(DayLinks.askDay(), askDay::ask)
                .post(DayLinks.mailDay(), askDay::send)
                .post(DayLinks.dayWish(), askDay::answer)
                .get(MoneyLinks.AGREE + "{secret}/visits/{id}", agree::show)
                .post(MoneyLinks.AGREE + "{secret}/visits/{id}", agree::take)
                .get("/visits/{id}/plan", plan::show)
                .get("/visits/{id}/burnish", burnish::show)
                .get("/visits/{id}/tags.pdf", plan::sendTags)
                .get("/visits/{id}/handover.pdf", findings::sendSheet)
                .get("/wheels", wheel::find)
                .get("/wheels/{tag}", wheel::show)
                .get("/shelf-labels.pdf", wheel::sendLabels)
                .get("/wheel-tags.pdf", wheel::sendTags)
                .get(ShopLinks.DEVICES, devices::showDevices)
                .post(ShopLinks.DEVICES + "/people", devices::addPerson)
                .post(ShopLinks.DEVICES + "/people/remove", devices::removePerson)
                .post(ShopLinks.DEVICES + "/unpair", devices::unpair)
                .get(ShopLinks.PAIR, devices::showPair)
                .post(ShopLinks.PAIR, devices::pair)
                .any((request, response) -> pages.sendProblem(response, 404, Told.say(new DoorSaid.NoPage())));
        Problems.route(routing, pages);
    }
}
