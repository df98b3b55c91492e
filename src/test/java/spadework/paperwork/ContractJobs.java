// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Map;
import java.util.function.Consumer;
import spadework.drawing.plan.PlanSketch;
import spadework.drawing.shape.Scene;
import spadework.office.Bid;
import spadework.office.Outcome;
import spadework.office.PaperKind;
import spadework.paperwork.contract.ContractPaper;
import spadework.press.page.PageInfo;
import spadework.press.page.PagePress;
import spadework.press.svg.SceneSvg;
import spadework.press.template.Templates;
import spadework.samples.Samples;

/**
 * Jobs of the first sample, moved to a state, with all that a contract asks for; each test takes away what it is about.
 */
public final class ContractJobs {
    public static final String SIGNED = "2026-07-01";

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final PagePress PRESS = new PagePress(Templates.bundled());
    private static final Path SAMPLES = Path.of("sample-quotes");
    private static final String SIGNING = """
            {
              "on": "2026-07-01", "received": "2026-07-01", "place": "home", "oldestAge": 67, "specialOrder": "$250.00", "dateIsEssential": false,
              "salesperson": {"name": "Odo Fennimarsh", "license": "S-0417"},
              "subcontractors": [
                {"name": "Larkwick Electric LLC", "address": "9 Spindle Row", "phone": "(614) 555-0161", "trade": "wiring"}
              ],
              "afterDisaster": false,
              "materials": ["Liquid synthetic rubber: Larkseal LR-60, 5 gal pails, 6 pails"],
              "depositHeld": "In a trust account at Pellmark Savings Bank, 3 Mill Street, Pellmark",
              "permits": "We apply for the building permit and call the inspections"
            }
            """;
    private static final String MORE_OF_COMPANY = """
            {
              "taxId": "00-0000417", "bond": "Bond 417 over $25,000, Tallowgate Surety", "affiliates": [],
              "license": {
                "label": "Contractor registration", "number": "CR-00417", "classification": "A, basements",
                "until": "2027-06-30"
              },
              "insurance": {
                "carrier": "Tallowgate Mutual", "policy": "GL-220417-6", "limits": "$1,000,000 each occurrence",
                "eachOccurrence": "$1,000,000.00", "improperWork": "$10,000.00",
                "until": "2027-03-31", "phone": "(614) 555-0190", "workers": "Tallowgate Mutual, policy WC-220417"
              }
            }
            """;

    private static final String OPTIONS = """
            [
              {
                "label": "OP1", "title": "Front wall as well", "why": "Keeps that side dry too",
                "adds": {
                  "walls": [
                    {
                      "label": "F", "where": "front wall", "faces": "south", "from": "0 ft", "length": "26 ft",
                      "depth": "5 ft", "kind": "block", "finish": {"system": "coating"},
                      "condition": {
                        "surface": "bare", "cracks": "0 ft", "horizontalCrack": false, "displaced": false,
                        "footingUndermined": false, "bow": "0 in"
                      }
                    }
                  ]
                }
              },
              {
                "label": "OP2", "title": "Sod and not seed", "why": "Green at once",
                "adds": {"restoration": {"sod": "200 sf"}}
              }
            ]
            """;
    private static final String ACCEPTED = """
            {
              "revision": 1, "on": "2026-07-01", "by": ["Ida Wrenfield"], "options": ["OP1"], "declined": ["OP2"],
              "signature": {"typed": "Ida Wrenfield", "consent": "Read it on paper"}, "price": "$30,000.00",
              "bookDate": "2026-01-01", "templates": "a1"
            }
            """;
    private static final String CHANGE = """
            [
              {
                "number": 1, "title": "No roof line", "issued": "2026-07-08", "reason": "less work", "why": "Done by others",
                "evidence": "Seen on site", "takesAway": {"pipes": ["R1"], "downspouts": ["DS1", "DS2"], "outlets": ["O2"]},
                "days": -1, "state": "accepted",
                "decision": {
                  "on": "2026-07-09", "by": ["Ida Wrenfield"], "price": "-$900.00",
                  "signature": {"typed": "Ida Wrenfield", "consent": "Read it on paper"}
                }
              }
            ]
            """;

    private ContractJobs() {}

    /** Gives the job two options, a wall OP1 and sod OP2. */
    public static void withOptions(ObjectNode job) {
        job.set("options", tree(OPTIONS));
    }

    /** The same, of which the wall is taken and the sod declined. */
    public static void accepted(ObjectNode job) {
        withOptions(job);
        job.set("accepted", tree(ACCEPTED));
    }

    /** The same, with the roof line taken away by a change order that both signed. */
    public static void changed(ObjectNode job) {
        accepted(job);
        job.set("changes", tree(CHANGE));
    }

    private static JsonNode tree(String text) {
        try {
            return JSON.readTree(text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A job in that state with every input given, and a deposit that all states allow. */
    public static Path in(Path folder, String state) {
        return in(folder, state, signing -> {}, company -> {});
    }

    /** The same, changed. */
    public static Path in(Path folder, String state, Consumer<ObjectNode> job, Consumer<ObjectNode> company) {
        try {
            ObjectNode whole = object(SAMPLES.resolve("block-basement-to-swale/job.json"));
            ((ObjectNode) whole.at("/site/address")).put("state", state);
            whole.put("issued", "2026-06-20");
            whole.remove("photos");
            for (JsonNode seen : whole.get("observations")) {
                ((ObjectNode) seen).remove("photos");
            }
            whole.set("signing", JSON.readTree(SIGNING));
            ObjectNode firm = object(SAMPLES.resolve("company.json"));
            firm.remove("logo");
            firm.setAll((ObjectNode) JSON.readTree(MORE_OF_COMPANY));
            ((ObjectNode) firm.get("license")).put("state", state);
            ((ObjectNode) firm.at("/payments/0")).put("share", "3%");
            ((ObjectNode) firm.at("/payments/4")).put("share", "17%");
            ((ObjectNode) firm.at("/payments/1")).put("share", "20%").put("workDone", "25%");
            ((ObjectNode) firm.at("/payments/2")).put("share", "30%").put("workDone", "55%");
            ((ObjectNode) firm.at("/payments/3")).put("share", "30%").put("workDone", "85%");
            whole.putArray("terms").add("This estimate costs you nothing.");
            job.accept(whole);
            company.accept(firm);
            Files.writeString(folder.resolve("job.json"), JSON.writeValueAsString(whole));
            Files.writeString(folder.resolve("company.json"), JSON.writeValueAsString(firm));
            Files.copy(SAMPLES.resolve("price-book.json"), folder.resolve("price-book.json"));
            return folder;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static Bid bid(Path folder) {
        return (Bid) Samples.office().bid(folder);
    }

    /** The printed contract. */
    public static byte[] pdf(Path folder) {
        return file(folder, ".pdf");
    }

    /** The same of a signed job whose records are not kept beside it, which the office would not print. */
    public static byte[] signed(Path folder) {
        Bid bid = bid(folder);
        Dossier contracted = bid.contracted();
        Scene plan = PlanSketch.of(contracted.job());
        Map<String, Object> model =
                Map.of("contract", ContractPaper.of(contracted, bid.proposed(), plan), "plan", SceneSvg.of(plan));
        return PRESS.print(
                "contract",
                model,
                new PageInfo("en-US", "Test", contracted.job().issued()));
    }

    public static byte[] file(Path folder, String ending) {
        try {
            Outcome outcome = Samples.office().documents(folder, folder.resolve("out"), EnumSet.of(PaperKind.CONTRACT));
            if (!(outcome instanceof Outcome.Printed printed)) {
                throw new IllegalStateException(outcome.toString());
            }
            return Files.readAllBytes(printed.files().stream()
                    .filter(file -> file.toString().endsWith(ending))
                    .findFirst()
                    .orElseThrow());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static ObjectNode object(Path file) throws IOException {
        return (ObjectNode) JSON.readTree(Files.readString(file));
    }
}
