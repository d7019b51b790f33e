package cornerbook.app.book.customer;

import static cornerbook.app.book.store.Transactions.within;

import cornerbook.app.book.bill.BillLedger;
import cornerbook.app.book.bill.CreditReason;
import cornerbook.app.book.car.CarReader;
import cornerbook.app.book.customer.KeptOfCustomer.KnownCar;
import cornerbook.app.book.customer.KeptOfCustomer.Mention;
import cornerbook.app.book.estimate.Estimate;
import cornerbook.app.book.estimate.EstimateLedger;
import cornerbook.app.book.estimate.WorkOfVisit;
import cornerbook.app.book.mail.MailLedger;
import cornerbook.app.book.store.TableRow;
import cornerbook.app.book.store.Transactions;
import cornerbook.app.book.visit.Because;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** What the book keeps of a person, and how that is erased. The technical record of the car stays. */
public final class CustomerLedger {
    /** Stands where something was erased. */
    public static final String ERASED = "–";

    private static final String OF_CUSTOMER =
            " in (select visit.id from visit join vehicle on vehicle.id = visit.vehicle_id where vehicle.customer_id = ?)";

    private static final String MENTIONS = """
            select visit.id as visit_id, visit.visit_date as on_day, mention.kind, mention.words, mention.name, mention.place_in_list from (
                select visit_id, 'REMARK' as kind, words, null as name, place_in_list from visit_remark
                union all select visit_id, 'DECLINED', sentence, said_by, place_in_list from declined_work
                union all select visit_id, 'WITHOUT_CHARGE', case when reason in ('SAFETY', 'OWN_FAULT', 'GOODWILL') then null else reason end, null, place_in_list from work_answer where kind = 'WITHOUT_CHARGE'
                union all select visit_id, 'ACKNOWLEDGED', null, acknowledged_by, 0 from departure where acknowledged_by is not null
                union all select visit_id, 'AGREED', agreement.words, agreement.name, agreement.place_in_list from agreement join estimate on estimate.id = agreement.estimate_id
                union all select visit_id, case answer when 'DECLINED' then 'CALL_DECLINED' else answer end, null, null, place_in_list from call_answer
            ) mention
                join visit on visit.id = mention.visit_id
                join vehicle on vehicle.id = visit.vehicle_id
            where vehicle.customer_id = ?
            union all
            select null, day, case state when 'MISSED' then state else 'APPOINTMENT' end, trim(note || ' ' || coalesce(reason, '')), null, turn
                from appointment join vehicle on vehicle.id = appointment.vehicle_id
            where vehicle.customer_id = ?
            union all
            select null, coalesce(day_wish.day, substr(day_wish.made_at, 1, 10)), 'WISHED', null, null, day_wish.place_in_list
                from day_wish join day_asking on day_asking.id = day_wish.asking_id join vehicle on vehicle.id = day_asking.vehicle_id
            where vehicle.customer_id = ?
            order by on_day, visit_id, kind, place_in_list""";

    private final Transactions store;

    public CustomerLedger(Transactions store) {
        this.store = store;
    }

    /** All that the book has of a person; empty when it knows none of that id. */
    public Optional<KeptOfCustomer> find(String customerId) {
        return store.read(handle -> handle.select("select * from customer where id = ?", customerId)
                .map((row, context) -> CarReader.customer(row))
                .findFirst()
                .map(customer -> new KeptOfCustomer(
                        customer,
                        cars(handle, customerId),
                        mentions(handle, customerId),
                        ContactLedger.listOf(handle, customerId),
                        new MailLedger(within(handle)).listOf(customerId),
                        estimates(handle, customerId),
                        bills(handle, customerId),
                        erased(handle, customerId))));
    }

    /** Customers of whom no car was here on that day or later, and whose data were not erased; those gone longest first. */
    public List<GoneCustomer> listNotHereSince(LocalDate day) {
        return store.read(handle -> handle.select("""
                                select customer.id, customer.name, count(distinct vehicle.id) as cars, max(visit.visit_date) as last_visit
                                from customer
                                    join vehicle on vehicle.customer_id = customer.id
                                    join visit on visit.vehicle_id = vehicle.id
                                where not exists (select 1 from customer_erased where customer_erased.customer_id = customer.id)
                                group by customer.id, customer.name
                                having max(visit.visit_date) < ?
                                order by max(visit.visit_date), customer.name, customer.id""", day.toString())
                .map((row, context) -> new GoneCustomer(
                        row.getString("id"),
                        row.getString("name"),
                        row.getInt("cars"),
                        LocalDate.parse(row.getString("last_visit"))))
                .list());
    }

    /**
     * Erases name, telephone, e-mail and language of a person, that person's name wherever it was written at a visit, the words in
     * which the person agreed or not to being reached, and what was written to the person. What was measured and done at the car stays,
     * and that there was an answer and an e-mail. Estimates and bills stay as they are: a shop has to keep them, and they name nobody.
     *
     * @param plates also the plates of the cars
     * @param words also complaints, and notes of visits and appointments, as they may tell of the person
     * @return whether there is such a person
     */
    public boolean erase(String customerId, boolean plates, boolean words, Because because) {
        return store.write(handle -> {
            if (handle.execute(
                            "update customer set name = ?, phone = null, email = null, language = null where id = ?",
                            ERASED,
                            customerId)
                    == 0) {
                return false;
            }
            handle.execute("update contact_answer set words = ? where customer_id = ?", ERASED, customerId);
            handle.execute(
                    "update mail_event set answer = ? where answer <> '' and mail_id in (select id from mail_message where customer_id = ?)",
                    ERASED,
                    customerId);
            handle.execute(
                    "update mail_message set address = ?, subject = ?, body = ? where customer_id = ?",
                    ERASED,
                    ERASED,
                    ERASED,
                    customerId);
            handle.execute("update declined_work set said_by = ? where visit_id" + OF_CUSTOMER, ERASED, customerId);
            handle.execute(
                    "update departure set acknowledged_by = ? where acknowledged_by is not null and visit_id"
                            + OF_CUSTOMER,
                    ERASED,
                    customerId);
            handle.execute(
                    "update agreement set name = ?, contact = case when contact = '' then '' else '–' end, signature = null"
                            + " where estimate_id in (select id from estimate where visit_id" + OF_CUSTOMER + ")",
                    ERASED,
                    customerId);
            eraseCreditWords(handle, customerId);
            if (words) {
                eraseReasons(handle, customerId);
                handle.execute("update visit_remark set words = ? where visit_id" + OF_CUSTOMER, ERASED, customerId);
                handle.execute(
                        "update work_answer set reason = ? where reason not in ('', 'SAFETY', 'OWN_FAULT', 'GOODWILL')"
                                + " and visit_id" + OF_CUSTOMER,
                        ERASED,
                        customerId);
                for (var column : List.of("note", "reason")) {
                    handle.execute(
                            "update appointment set %s = ? where %s <> '' and vehicle_id in (select id from vehicle where customer_id = ?)"
                                    .formatted(column, column),
                            ERASED,
                            customerId);
                }
            }
            if (plates) {
                handle.execute("update vehicle set plate = ? where customer_id = ?", ERASED, customerId);
            }
            handle.execute(
                    "delete from car_words where vehicle_id in (select id from vehicle where customer_id = ?)",
                    customerId);
            // Whoever has a form of the car open does not write the old name back.
            handle.execute("update vehicle set revision = revision + 1 where customer_id = ?", customerId);
            handle.execute("delete from customer_erased where customer_id = ?", customerId);
            new TableRow("customer_erased")
                    .set("customer_id", customerId)
                    .set("reason", because.reason())
                    .set("person", because.person())
                    .set("erased_on", because.on())
                    .insert(handle);
            return true;
        });
    }

    /** What was written of credit notes, which bear a reason of the list for good; of older notes the reason itself. */
    private static void eraseCreditWords(Handle handle, String customerId) {
        handle.execute(
                "update credit_words set words = ? where bill_number in (select number from bill where visit_id"
                        + OF_CUSTOMER + ")",
                ERASED,
                customerId);
        var listed = Arrays.stream(CreditReason.values())
                .map(reason -> "'" + reason.name() + "'")
                .collect(Collectors.joining(", "));
        handle.execute(
                "update bill set reason = ? where credits is not null and reason not in (" + listed + ") and visit_id"
                        + OF_CUSTOMER,
                ERASED,
                customerId);
    }

    /** Notes of visits, and why something was put right, left undone or let go: whoever wrote it may have named the person. */
    private static void eraseReasons(Handle handle, String customerId) {
        handle.execute("update visit set notes = ? where notes <> '' and id" + OF_CUSTOMER, ERASED, customerId);
        handle.execute("update visit_change set reason = ? where visit_id" + OF_CUSTOMER, ERASED, customerId);
        handle.execute(
                "update visit_change set before_text = ?, after_text = ? where what = 'NOTES' and visit_id"
                        + OF_CUSTOMER,
                ERASED,
                ERASED,
                customerId);
        handle.execute(
                "update work_tick set reason = ? where reason is not null and visit_id" + OF_CUSTOMER,
                ERASED,
                customerId);
        handle.execute(
                "update departure_reason set reason = ? where departure_id in (select id from departure where visit_id"
                        + OF_CUSTOMER + ")",
                ERASED,
                customerId);
    }

    private static List<KnownCar> cars(Handle handle, String customerId) {
        return handle.select("""
                        select vehicle.id, vehicle.name, vehicle.plate, vehicle.vin, count(visit.id) as visits, max(visit.visit_date) as last_visit,
                            (select count(*) from photo join visit on visit.id = photo.visit_id where visit.vehicle_id = vehicle.id) as photos
                        from vehicle left join visit on visit.vehicle_id = vehicle.id
                        where vehicle.customer_id = ?
                        group by vehicle.id, vehicle.name, vehicle.plate, vehicle.vin
                        order by vehicle.name, vehicle.id""", customerId)
                .map((row, context) -> new KnownCar(
                        row.getString("id"),
                        row.getString("name"),
                        row.getString("plate"),
                        row.getString("vin"),
                        row.getInt("visits"),
                        day(row.getString("last_visit")),
                        row.getInt("photos")))
                .list();
    }

    private static List<PricedEstimate> estimates(Handle handle, String customerId) {
        var ledger = new EstimateLedger(within(handle));
        return visitsWith(handle, "estimate", customerId).stream()
                .map(ledger::of)
                .flatMap(work -> work.estimates().stream().map(estimate -> estimate(work, estimate)))
                .toList();
    }

    private static PricedEstimate estimate(WorkOfVisit work, Estimate estimate) {
        return new PricedEstimate(
                estimate.visitId(),
                estimate.day(),
                estimate.validUntil(),
                IntStream.range(0, estimate.lines().size())
                        .mapToObj(place -> new PricedEstimate.Line(
                                estimate.lines().get(place).words(),
                                estimate.lines().get(place).amount(),
                                work.findAnswer(estimate, place)
                                        .flatMap(agreement -> Optional.ofNullable(
                                                agreement.answers().get(place)))
                                        .orElse(null)))
                        .toList());
    }

    private static List<PricedBill> bills(Handle handle, String customerId) {
        var ledger = new BillLedger(within(handle));
        return visitsWith(handle, "bill", customerId).stream()
                .flatMap(visitId -> ledger.of(visitId).stream())
                .map(PricedBill::of)
                .sorted(Comparator.comparing(PricedBill::number))
                .toList();
    }

    /** The visits of a customer's cars of which a table has something, earliest first; those that were cancelled as well. */
    private static List<String> visitsWith(Handle handle, String table, String customerId) {
        return handle.select(
                        "select visit.id from visit join vehicle on vehicle.id = visit.vehicle_id where vehicle.customer_id = ?"
                                + " and exists (select 1 from " + table + " where " + table
                                + ".visit_id = visit.id) order by visit.visit_date, visit.id",
                        customerId)
                .mapTo(String.class)
                .list();
    }

    private static List<Mention> mentions(Handle handle, String customerId) {
        return handle.select(MENTIONS, customerId, customerId, customerId)
                .map((row, context) -> new Mention(
                        row.getString("visit_id"),
                        LocalDate.parse(row.getString("on_day")),
                        Mention.Kind.valueOf(row.getString("kind")),
                        row.getString("words"),
                        row.getString("name")))
                .list();
    }

    private static @Nullable Because erased(Handle handle, String customerId) {
        return handle.select("select * from customer_erased where customer_id = ?", customerId)
                .map((row, context) -> new Because(
                        null,
                        row.getString("reason"),
                        row.getString("person"),
                        LocalDate.parse(row.getString("erased_on"))))
                .findFirst()
                .orElse(null);
    }

    private static @Nullable LocalDate day(@Nullable String text) {
        return text == null ? null : LocalDate.parse(text);
    }
}
