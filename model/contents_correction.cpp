#include "model/contents.h"
#include "model/lexicon.h"
#include "model/sentence.h"

namespace model {
namespace {

/// Takes the parts that differ between what was said before and what is said now.
class Taker {
public:
    Taker(Thing &into, const Thing &before, const Thing &after)
        : m_into(into), m_before(before), m_after(after) {}
    template<class T> void operator()(T Thing::*member) const {
        if (m_before.*member != m_after.*member)
            m_into.*member = m_after.*member;
    }

private:
    Thing &m_into;
    const Thing &m_before, &m_after;
};

void takeUsual(Thing &into, const Thing &before, const Thing &after) {
    for (const auto &fact : before.usual) {
        if (!after.usual.contains(fact))
            into.usual.erase(fact);
    }
    for (const auto &fact : after.usual) {
        if (!before.usual.contains(fact))
            into.usual.insert(fact);
    }
}

} // namespace

Result<Thing> correctedBy(const Thing &thing, const std::string &line, const Lexicon &lexicon) {
    const auto before = parseContents(contentsLine(thing, lexicon), lexicon);
    const auto after = parseContents(line, lexicon);
    if (!after)
        return tl::unexpected(after.error());
    if (after->size() != 1 || !before)
        return fail(ErrorCode::NotUnderstood,
                    Sentence::tr("This line corrects one thing, and more than one was understood. Put a "
                                 "second thing on the line of its shelf. Kept."));
    Thing out = thing;
    const Thing &was = before->front().thing;
    const Thing &is = after->front().thing;
    const Taker take(out, was, is);
    take(&Thing::name), take(&Thing::count), take(&Thing::group), take(&Thing::sub), take(&Thing::shape);
    take(&Thing::surface), take(&Thing::width), take(&Thing::depth), take(&Thing::height),
        take(&Thing::weight);
    take(&Thing::usesPerWeek), take(&Thing::refillsPerWeek), take(&Thing::sound), take(&Thing::storage);
    take(&Thing::klass), take(&Thing::allergens), take(&Thing::glass), take(&Thing::hazard),
        take(&Thing::medicine);
    take(&Thing::sharp), take(&Thing::hotUse), take(&Thing::spoilsMeal), take(&Thing::dateKind);
    take(&Thing::keepingRow), take(&Thing::area), take(&Thing::like), take(&Thing::packSize),
        take(&Thing::note);
    takeUsual(out, was, is);
    out.doubt = is.doubt;
    out.said = is.said;
    return out;
}

} // namespace model
