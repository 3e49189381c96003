#pragma once
#include "model/case.h"

/// The fields of each part of a case, once for both directions: `a` is a Writer or a Reader
/// (codec_archive.h). To add a field, add a line: older records then load with its default. To rename or drop
/// one, write a migration.
namespace model::codec {

template<class A> void fields(A &a, Length &v) {
    a("cm", v.value.value), a("typed", v.typed), a("basis", v.basis);
}

template<class A> void fields(A &a, PaperMedia &v) {
    a("large-print", v.largePrint), a("print-size", v.printSize), a("braille", v.braille);
    a("web", v.web), a("plain-text", v.plainText);
}

template<class A> void fields(A &a, Client &v) {
    a("name", v.name), a("code", v.code), a("born", v.born), a("contact", v.contact);
    a("referred-by", v.referredBy), a("question", v.question), a("language", v.language), a("media", v.media);
    a("whom-to-ask", v.whomToAsk), a("reads-braille", v.readsBraille), a("tag-reader", v.hasTagReader);
    a("code-reader", v.hasCodeReader), a("invented", v.invented), a("archived", v.archived);
}

template<class A> void fields(A &a, SafetyAnswer &v) {
    a("answer", v.answer), a("note", v.note), a("asked", v.asked);
}

template<class A> void fields(A &a, SafetyFacts &v) {
    a("answers", v.answers);
}

template<class A> void fields(A &a, Household &v) {
    a("people", v.people), a("children", v.children), a("child-reach", v.childReach);
    a("adult-memory-loss", v.adultWithMemoryLoss), a("pets", v.pets), a("who-shops", v.whoShops);
    a("who-cooks", v.whoCooks), a("who-puts-away", v.whoPutsAway), a("who-reads-print", v.whoReadsPrint);
    a("sharing-consent", v.sharingConsent);
}

template<class A> void fields(A &a, Diet &v) {
    a("asked", v.asked), a("avoids", v.avoids), a("other", v.other), a("facts", v.facts);
}

template<class A> void fields(A &a, Measurement &v) {
    a("test", v.test), a("side", v.side), a("typed", v.typed), a("distance", v.distanceTyped);
    a("chart", v.chart), a("method", v.method), a("finger", v.finger), a("with-glasses", v.withGlasses);
    a("date", v.date), a("not-tested-because", v.notTestedBecause);
}

template<class A> void fields(A &a, Marker &v) {
    a("key", v.key), a("name", v.name), a("feel", v.feel), a("how-to-fix", v.howToFix);
    a("medium", v.medium), a("size", v.size), a("relief", v.relief), a("texture", v.texture);
    a("surfaces", v.surfaces), a("survives-freezer", v.survivesFreezer), a("survives-wet", v.survivesWet);
    a("fix-minutes", v.fixMinutes), a("read-seconds", v.readSeconds), a("learn-minutes", v.learnMinutes);
    a("cost", v.cost), a("magnetic", v.magnetic), a("latex", v.latex), a("adhesive", v.adhesive);
    a("choking-size", v.chokingSize), a("sharp", v.sharp), a("heat-limit", v.heatLimit);
    a("caution", v.caution);
}

template<class A> void fields(A &a, KitMark &v) {
    a("marker", v.marker), a("in-kit", v.inKit);
}

template<class A> void fields(A &a, TestedMark &v) {
    a("key", v.key), a("size", v.features.size), a("height", v.features.height);
    a("texture", v.features.texture);
}

template<class A> void fields(A &a, TouchTrial &v) {
    a("first", v.given.first), a("second", v.given.second), a("answer", v.answer), a("at", v.at);
    a("hand", v.hand), a("finger", v.finger);
}

template<class A> void fields(A &a, TouchTestRecord &v) {
    a("begun", v.begun), a("marks", v.marks), a("seed", v.seed), a("limit", v.limit);
    a("credible", v.credible), a("hand", v.hand), a("finger", v.finger), a("condition", v.condition);
    a("trials", v.trials), a("stopped", v.stopped), a("recheck", v.recheck);
}

template<class A> void fields(A &a, Unit &v) {
    a("order", v.order), a("name", v.name), a("kind", v.kind), a("area", v.area), a("width", v.width);
    a("colour", v.colour), a("lockable", v.lockable);
}

template<class A> void fields(A &a, Place &v) {
    a("unit", v.unit), a("order", v.order), a("name", v.name), a("drawer", v.drawer), a("counter", v.counter);
    a("width", v.width), a("depth", v.depth), a("clear", v.clear), a("height", v.height);
    a("storage", v.storage), a("light", v.light), a("own", v.own);
}

template<class A> void fields(A &a, AllergenFact &v) {
    a("allergen", v.allergen), a("state", v.state), a("read-by", v.readBy);
}

template<class A> void fields(A &a, Thing &v) {
    a("name", v.name), a("count", v.count), a("group", v.group), a("sub", v.sub), a("shape", v.shape);
    a("surface", v.surface), a("width", v.width), a("depth", v.depth), a("height", v.height);
    a("weight-kg", v.weight), a("uses-per-week", v.usesPerWeek), a("refills-per-week", v.refillsPerWeek);
    a("sound", v.sound), a("storage", v.storage), a("class", v.klass), a("allergens", v.allergens);
    a("glass", v.glass), a("hazard", v.hazard), a("medicine", v.medicine), a("sharp", v.sharp);
    a("hot-use", v.hotUse), a("spoils-meal", v.spoilsMeal), a("date-kind", v.dateKind);
    a("best-before", v.bestBefore), a("keeping-row", v.keepingRow), a("area", v.area), a("place", v.place);
    a("keep", v.keep), a("mark-in-use", v.markInUse), a("doubt", v.doubt), a("usual", v.usual);
    a("said", v.said), a("like", v.like), a("pack-size", v.packSize), a("note", v.note);
    a("directions", v.directions), a("diet-facts", v.dietFacts), a("own", v.own);
}

template<class A> void fields(A &a, Control &v) {
    a("name", v.name), a("settings", v.settings);
}

template<class A> void fields(A &a, Appliance &v) {
    a("name", v.name), a("controls", v.controls), a("heat", v.heat);
}

template<class A> void fields(A &a, Overrule &v) {
    a("thing", v.thing), a("place", v.place), a("forbid", v.forbid), a("reason", v.reason), a("date", v.date);
    a("marker", v.marker), a("wording", v.wording);
}

template<class A> void fields(A &a, PlanWeights &v) {
    a("reach", v.reach), a("walk", v.walk), a("dark", v.dark), a("move", v.move), a("group", v.group);
    a("shelf-mates", v.shelfMates), a("learning", v.learning), a("marking", v.marking);
    a("wrong-pick", v.wrongPick), a("spoilt-meal", v.spoiltMeal);
}

template<class A> void fields(A &a, PlanWishes &v) {
    a("weights", v.weights), a("most-kinds", v.mostKinds);
}

template<class A> void fields(A &a, PlanLine &v) {
    a("thing", v.thing), a("place", v.place), a("order", v.order), a("marker", v.marker);
    a("meanings", v.meanings), a("label", v.labelText);
}

template<class A> void fields(A &a, MeaningMark &v) {
    a("meaning", v.meaning), a("marker", v.marker);
}

template<class A> void fields(A &a, Shortage &v) {
    a("rule", v.rule), a("need-cm", v.needCm), a("have-cm", v.haveCm), a("things", v.things);
    a("places", v.places), a("sentence", v.sentence);
}

template<class A> void fields(A &a, Terms &v) {
    a("unary", v.unary), a("bay", v.bay), a("place", v.place), a("type", v.type), a("mark", v.mark);
    a("risk", v.risk);
}

template<class A> void fields(A &a, Plan &v) {
    a("made", v.made), a("lines", v.lines), a("meaning-marks", v.meaningMarks), a("shortages", v.shortages);
    a("terms", v.terms);
}

template<class A> void fields(A &a, Goal &v) {
    a("sentence", v.sentence), a("levels", v.levels), a("importance", v.importance);
    a("difficulty", v.difficulty), a("agreed", v.agreed), a("review", v.review);
}

template<class A> void fields(A &a, Rating &v) {
    a("goal", v.goal), a("visit", v.visit), a("level", v.level), a("evidence", v.evidence), a("date", v.date);
}

template<class A> void fields(A &a, Visit &v) {
    a("date", v.date), a("number", v.number), a("planned-minutes", v.plannedMinutes);
    a("who-was-there", v.whoWasThere), a("note", v.note), a("carried-over", v.carriedOver);
    a("closed", v.closed);
}

} // namespace model::codec
