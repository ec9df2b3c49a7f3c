package io.github.leafproof.dsl.graph;

import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.inspection.engine.CardFact;
import io.github.leafproof.inspection.engine.EngineCard;
import io.github.leafproof.inspection.engine.Fact;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.QuantityException;
import io.github.leafproof.inspection.quantity.Spelling;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A fact of the shop's own: a card states it in whatever way, and the procedure that declares it says what it should be.
 *
 * @param place where it stands on the card
 */
record ShopFact(Node.Fact declared, Fact stated, String place) {

    /** Who is told what is wrong with it, and how it is mended. */
    interface Complaint {
        void that(ShopFact fact, String message, String remedy);
    }

    /** The fact of that declaration, where it is one of the shop's own and the card states it. */
    static Optional<ShopFact> of(Node.Fact declared, EngineCard card, @Nullable String variant) {
        String name = EngineFactValue.nameOnCard(declared);
        if (CardFact.named(name).isPresent()) {
            return Optional.empty();
        }
        boolean differs = variant != null
                && card.shopVariants().getOrDefault(variant, Map.of()).containsKey(name);
        String place = differs ? "$.variants['" + variant + "'].shop." + name : "$.shop." + name;
        return card.fact(name, variant).map(stated -> new ShopFact(declared, stated, place));
    }

    /** Its value, or null after complaining that it is not what the procedure declares. */
    @Nullable
    Value value(Complaint complaint) {
        Type type = declared.type();
        if (type instanceof Type.Measure measure) {
            return measured(measure.dimension(), complaint);
        }
        if (type instanceof Type.Count && stated instanceof Fact.Amount amount) {
            return count(amount.amount(), complaint);
        }
        if (type instanceof Type.YesNo && stated instanceof Fact.Flag flag) {
            return Value.Judged.certain(flag.yes());
        }
        if (type instanceof Type.Choice choice && stated instanceof Fact.Word word) {
            return pick(choice, word.word(), complaint);
        }
        if (type instanceof Type.Text && stated instanceof Fact.Word word) {
            return new Value.Words(word.word());
        }
        if (type instanceof Type.Date && stated instanceof Fact.Word word) {
            return day(word.word(), complaint);
        }
        if (type instanceof Type.Items && stated instanceof Fact.Words words) {
            return new Value.Things(words.words());
        }
        return otherKind(complaint);
    }

    private @Nullable Value measured(Dimension dimension, Complaint complaint) {
        Quantity amount;
        if (stated instanceof Fact.Amount given) {
            amount = given.amount();
        } else if (stated instanceof Fact.Word word) {
            try {
                amount = Quantity.parse(word.word());
            } catch (QuantityException wrong) {
                complaint.that(this, shouldBe() + ": " + wrong.problem(), wrong.remedy());
                return null;
            }
        } else {
            return otherKind(complaint);
        }
        return amount.dimension().equals(dimension) ? Value.Amount.stated(amount) : otherKind(complaint);
    }

    private @Nullable Value count(Quantity amount, Complaint complaint) {
        boolean whole = amount.dimension().isRatio() && amount.toString().matches("[0-9]{1,9}");
        return whole ? Value.Amount.stated(amount) : otherKind(complaint);
    }

    private @Nullable Value day(String written, Complaint complaint) {
        try {
            return new Value.Day(LocalDate.parse(written));
        } catch (DateTimeException noDay) {
            return otherKind(complaint);
        }
    }

    private @Nullable Value pick(Type.Choice choice, String word, Complaint complaint) {
        int option = choice.options().indexOf(word);
        if (option >= 0) {
            return new Value.Pick(option, word);
        }
        complaint.that(
                this,
                shouldBe() + ", not " + word,
                Spelling.nearest(word, choice.options())
                        .map(near -> "did you mean " + near + "?")
                        .orElse("write one of these"));
        return null;
    }

    private @Nullable Value otherKind(Complaint complaint) {
        complaint.that(this, shouldBe() + ", and the card says " + said(), "write it as " + example());
        return null;
    }

    private String shouldBe() {
        return "the procedure declares " + declared.name() + " as "
                + (declared.type() instanceof Type.Measure measure
                                && !measure.dimension().isRatio()
                        ? measure.dimension().phrase()
                        : declared.type().words());
    }

    private String said() {
        if (stated instanceof Fact.Amount amount) {
            return amount.amount().toString();
        }
        if (stated instanceof Fact.Flag flag) {
            return flag.yes() ? "yes (true)" : "no (false)";
        }
        return stated instanceof Fact.Word word ? "\"" + word.word() + "\"" : "a list of texts";
    }

    private String example() {
        Type type = declared.type();
        if (type instanceof Type.YesNo) {
            return "true or false";
        }
        if (type instanceof Type.Items) {
            return "a list: [ \"…\", \"…\" ]";
        }
        if (type instanceof Type.Date) {
            return "year, month and day: \"2026-03-04\"";
        }
        if (type instanceof Type.Count) {
            return "a whole number without quotes: 3";
        }
        if (type instanceof Type.Measure measure) {
            return measure.dimension().isRatio() ? "a plain number: 0.25" : "a number and its unit: \"8 mm\"";
        }
        return "a text in quotes: \"…\"";
    }
}
