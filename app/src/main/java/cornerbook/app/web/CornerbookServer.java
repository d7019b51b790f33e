package cornerbook.app.web;

import cornerbook.app.book.Book;
import cornerbook.app.book.BookException;
import cornerbook.core.visit.Assessor;
import io.helidon.http.HttpException;
import io.helidon.webserver.WebServer;
import io.helidon.webserver.WebServerConfig;
import io.helidon.webserver.http.HttpRouting;
import io.helidon.webserver.http.ServerResponse;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.logging.Logger;

/** The running web server. It listens on loopback only, unless its door is open to the shop's network. */
public final class CornerbookServer {
    private static final Logger LOG = Logger.getLogger(CornerbookServer.class.getName());
    /** A photo; each page and each entry has a smaller limit of its own. */
    private static final int LARGEST_BYTES = 9 * 1024 * 1024;

    private final WebServer server;
    private final Learning learning;
    private final List<Room> rooms;

    private CornerbookServer(WebServer server, Learning learning, List<Room> rooms) {
        this.server = server;
        this.learning = learning;
        this.rooms = rooms;
    }

    /**
     * Serves the book until it is stopped.
     *
     * @param port 0 takes any free one
     * @param clock says what day it is
     * @param shopName stands on top of each handover sheet, may be blank
     * @param rooms are opened beside the server's own pages
     * @throws IllegalStateException with one sentence when the port is in use
     */
    public static CornerbookServer start(
            Book book, Assessor assessor, int port, Clock clock, String shopName, Room... rooms) {
        return start(book, assessor, Door.local(port), clock, shopName, rooms);
    }

    /** The same where its door is. */
    public static CornerbookServer start(
            Book book, Assessor assessor, Door door, Clock clock, String shopName, Room... rooms) {
        requireFree(door.listensOn(), door.port());
        var pages = new Pages();
        var learning = new Learning(book, assessor, clock);
        var desk = new Desk(book, learning, clock);
        var pairing = new Pairing(desk.book().devices(), desk.clock());
        Consumer<HttpRouting.Builder> routes = routing -> {
            for (var room : rooms) {
                room.open(routing, desk, pages);
            }
            route(routing, pages, desk, shopName, door, pairing);
        };
        var builder = WebServer.builder()
                .address(door.listensOn())
                .port(door.port())
                .maxPayloadSize(LARGEST_BYTES)
                .shutdownHook(false)
                .shutdownGracePeriod(Duration.ofMillis(200))
                .routing(routes);
        listenForTablets(builder, routes, pages, door);
        var server = builder.build();
        server.start();
        if (!server.isRunning()) {
            throw new IllegalStateException("The pages could not be served on port %d.".formatted(door.port()));
        }
        return new CornerbookServer(server, learning, List.of(rooms));
    }

    /** The same pages by TLS at the address of the shop's network, and the certificate for it without. */
    private static void listenForTablets(
            WebServerConfig.Builder builder, Consumer<HttpRouting.Builder> routes, Pages pages, Door door) {
        var certificates = door.certificates();
        var address = door.address();
        if (certificates == null || address == null) {
            return;
        }
        var network = new InetSocketAddress(address, 0).getAddress();
        requireFree(network, door.port());
        requireFree(network, door.tabletsPort());
        builder.putSocket(
                        "tablets",
                        socket -> socket.address(network)
                                .port(door.tabletsPort())
                                .maxPayloadSize(LARGEST_BYTES)
                                .tls(tls -> tls.sslContext(certificates.context())))
                .routing("tablets", routes)
                .putSocket("certificate", socket -> socket.address(network).port(door.port()))
                .routing("certificate", new CertificateHandler(pages, door, certificates)::route);
    }

    /** Asked beforehand, as the server itself only logs that it could not start. */
    private static void requireFree(InetAddress address, int port) {
        try (var probe = new ServerSocket(port, 1, address)) {
            LOG.log(Level.FINE, "Port {0} is free", probe.getLocalPort());
        } catch (IOException e) {
            throw new IllegalStateException(
                    "Port %d is in use by another program, choose another one with --port.".formatted(port), e);
        }
    }

    public int port() {
        return server.port();
    }

    /** Learns from the book in the background, when that was never done. */
    public void learnIfNew() {
        learning.learnIfNew();
    }

    /** Returns when the last page is answered and nothing is being learned any more. */
    public void stop() {
        rooms.forEach(Room::close);
        server.stop();
        learning.close();
    }

    private static void route(
            HttpRouting.Builder routing, Pages pages, Desk desk, String shopName, Door door, Pairing pairing) {
        var today = new TodayHandler(desk, pages);
        var vehicle = new VehicleHandler(desk, pages);
        var carData = new CarDataHandler(desk, pages);
        var newVisit = new NewVisitHandler(desk, pages);
        var entry = new EntryHandler(desk, pages);
        var visitData = new VisitDataHandler(desk, pages);
        var findings = new FindingsHandler(desk, pages, shopName);
        var plan = new PlanHandler(desk, pages);
        var bench = new BenchHandler(desk, pages);
        var tools = new ToolsHandler(desk, pages);
        var shop = new ShopHandler(desk, pages);
        var climate = new ClimateHandler(desk, pages);
        var burnish = new BurnishHandler(desk, pages);
        var wheel = new WheelHandler(desk, pages);
        var person = new PersonHandler(desk, pairing);
        var devices = new PairingHandler(desk, pages, pairing, door);
        routing.addFilter(new RequestGuard(door, pairing));
        routing.get("/", today::show)
                .get("/assets/{digest}/{name}", pages::sendAsset)
                .post("/preferences", person::prefer)
                .post("/person", person::takeOver)
                .get("/bench", bench::list)
                .get("/shop", shop::show)
                .post("/shop/rules", shop::save)
                .get("/shop/tools", tools::show)
                .post("/shop/tools", tools::save)
                .post("/shop/tools/remove", tools::remove)
                .get(ClimateHandler.PAGE, climate::show)
                .post(ClimateHandler.PAGE, climate::save)
                .post(ClimateHandler.PAGE + "/remove", climate::remove)
                .get("/bench/{name}", bench::show)
                .get("/cars/new", carData::showNew)
                .post("/cars/new", carData::saveNew)
                .get("/cars/{id}/data", carData::show)
                .post("/cars/{id}/data", carData::save)
                .get("/cars/{id}", vehicle::show)
                .get("/cars/{id}/visits/new", newVisit::show)
                .post("/cars/{id}/visits/new", newVisit::save)
                .get("/visits/{id}", entry::show)
                .post("/visits/{id}", entry::saveReadings)
                .post("/visits/{id}/leaving", entry::saveLeaving)
                .post("/visits/{id}/retorque", entry::saveRetorque)
                .get("/visits/{id}/data", visitData::show)
                .post("/visits/{id}/data", visitData::save)
                .get("/visits/{id}/findings", findings::show)
                .post("/visits/{id}/photos/{photo}", findings::choosePhoto)
                .get("/visits/{id}/plan", plan::show)
                .get("/visits/{id}/burnish", burnish::show)
                .get("/visits/{id}/tags.pdf", plan::sendTags)
                .get("/visits/{id}/handover.pdf", findings::sendSheet)
                .get("/wheels", wheel::find)
                .get("/wheels/{tag}", wheel::show)
                .get("/shelf-labels.pdf", wheel::sendLabels)
                .get("/wheel-tags.pdf", wheel::sendTags)
                .get(Links.DEVICES, devices::showDevices)
                .post(Links.DEVICES + "/people", devices::addPerson)
                .post(Links.DEVICES + "/unpair", devices::unpair)
                .get(Links.PAIR, devices::showPair)
                .post(Links.PAIR, devices::pair)
                .any((request, response) -> pages.sendProblem(response, 404, "There is no page at this address."));
        routing.error(
                PageException.class,
                (request, response, problem) -> pages.sendProblem(response, problem.status(), sentence(problem)));
        routing.error(
                BookException.class,
                (request, response, problem) -> pages.sendProblem(response, 503, sentence(problem)));
        routing.error(
                HttpException.class,
                (request, response, problem) -> pages.sendProblem(
                        response, problem.status().code(), "The request was not understood, nothing was stored."));
        routing.error(RuntimeException.class, (request, response, problem) -> sendFault(pages, response, problem));
    }

    private static void sendFault(Pages pages, ServerResponse response, RuntimeException problem) {
        LOG.log(Level.WARNING, "A page failed", problem);
        pages.sendProblem(response, 500, "The program made a mistake on this page; what was stored before is safe.");
    }

    private static String sentence(Exception problem) {
        return String.valueOf(problem.getMessage());
    }
}
