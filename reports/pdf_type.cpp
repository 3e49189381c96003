#include "reports/pdf_type.h"
#include "reports/utf8.h"
#include <set>

namespace reports {

namespace {

constexpr const char *families =
    "Noto Sans, Noto Sans Devanagari, Noto Sans Arabic, Noto Sans Hebrew, Noto Sans CJK SC, "
    "Noto Sans Symbols, Noto Sans Symbols2, Noto Sans Math";

int units(double points) {
    return int(points * PANGO_SCALE);
}

struct Span {
    std::size_t begin = 0, end = 0; // bytes
};

std::vector<Span> wordsOf(const std::string &text) {
    std::vector<Span> words;
    for (std::size_t begin = 0; begin < text.size();) {
        const std::size_t end = std::min(text.find(' ', begin), text.size());
        if (end > begin)
            words.push_back({begin, end});
        begin = end + 1;
    }
    return words;
}

/// Whether the breaking rules of Unicode could end a line inside this word: dates, addresses, compounds.
bool hasBreakingMark(std::string_view word) {
    for (const std::string_view mark : {"-", "/", "–", "—", "‐", ".", "?", "|", "}", "%", "…"})
        if (word.find(mark) != std::string_view::npos)
            return true;
    return false;
}

void addTo(PangoAttrList *list, PangoAttribute *attribute, std::size_t begin, std::size_t end) {
    attribute->start_index = guint(begin);
    attribute->end_index = guint(end);
    pango_attr_list_insert(list, attribute);
}

} // namespace

const SetText::Stretch &SetText::stretchAt(int byte) const {
    for (const Stretch &stretch : stretches)
        if (byte < stretch.end)
            return stretch;
    return stretches.back();
}

std::vector<PangoLayoutLine *> SetText::lines() const {
    std::vector<PangoLayoutLine *> all;
    for (int i = 0; i < pango_layout_get_line_count(layout.get()); ++i)
        all.push_back(pango_layout_get_line_readonly(layout.get(), i));
    return all;
}

Typesetter::Typesetter(double points, const std::string &language)
    : m_fonts(pango_cairo_font_map_new()), m_context(pango_font_map_create_context(m_fonts.get())) {
    pango_cairo_font_map_set_resolution(PANGO_CAIRO_FONT_MAP(m_fonts.get()), 72); // a point is a point
    const std::unique_ptr<cairo_font_options_t, decltype(&cairo_font_options_destroy)> options(
        cairo_font_options_create(), cairo_font_options_destroy);
    cairo_font_options_set_hint_style(options.get(), CAIRO_HINT_STYLE_NONE);
    cairo_font_options_set_hint_metrics(options.get(), CAIRO_HINT_METRICS_OFF);
    pango_cairo_context_set_font_options(m_context.get(), options.get());
    pango_context_set_round_glyph_positions(m_context.get(), FALSE);
    pango_context_set_language(m_context.get(), pango_language_from_string(language.c_str()));
    const std::unique_ptr<PangoFontDescription, decltype(&pango_font_description_free)> font(
        pango_font_description_from_string(families), pango_font_description_free);
    pango_font_description_set_size(font.get(), units(points));
    pango_context_set_font_description(m_context.get(), font.get());
}

Held<PangoLayout> Typesetter::layout(const std::string &words, double points, Weight weight) const {
    Held<PangoLayout> made(pango_layout_new(m_context.get()));
    const std::unique_ptr<PangoFontDescription, decltype(&pango_font_description_free)> font(
        pango_font_description_copy(pango_context_get_font_description(m_context.get())),
        pango_font_description_free);
    pango_font_description_set_size(font.get(), units(points));
    pango_font_description_set_weight(font.get(),
                                      weight == Weight::Bold ? PANGO_WEIGHT_BOLD : PANGO_WEIGHT_NORMAL);
    pango_layout_set_font_description(made.get(), font.get());
    pango_layout_set_text(made.get(), words.c_str(), int(words.size()));
    return made;
}

double Typesetter::widthOf(const std::string &words, double points, Weight weight) const {
    int width = 0;
    pango_layout_get_size(layout(words, points, weight).get(), &width, nullptr);
    return double(width) / PANGO_SCALE;
}

double Typesetter::lineHeight(double points) const {
    int height = 0;
    pango_layout_get_size(layout("Hg", points, Weight::Regular).get(), nullptr, &height);
    return double(height) / PANGO_SCALE;
}

bool Typesetter::wordsFit(const std::string &words, double points, double width, Weight weight) const {
    for (const Span &word : wordsOf(words)) {
        const std::string letters = words.substr(word.begin, word.end - word.begin);
        // No letter is wider than its size, so most words need no measuring.
        if (double(letters.size()) * points > width && widthOf(letters, points, weight) > width)
            return false;
    }
    return true;
}

std::shared_ptr<SetText> Typesetter::set(const std::vector<OwnedRun> &runs, double points, double width,
                                         Weight weight) {
    auto text = std::make_shared<SetText>();
    std::string words;
    const std::unique_ptr<PangoAttrList, decltype(&pango_attr_list_unref)> attributes(pango_attr_list_new(),
                                                                                      pango_attr_list_unref);
    for (const OwnedRun &owned : runs) {
        const std::size_t begin = words.size();
        words += owned.run.text;
        text->stretches.push_back({int(words.size()), owned.owner, owned.run.link});
        if (owned.run.strong)
            addTo(attributes.get(), pango_attr_weight_new(PANGO_WEIGHT_BOLD), begin, words.size());
        if (!owned.run.language.empty())
            addTo(attributes.get(),
                  pango_attr_language_new(pango_language_from_string(owned.run.language.c_str())), begin,
                  words.size());
        // Ends the glyph run where the owner ends; the rule itself is drawn apart.
        if (owned.owner != runs.front().owner)
            addTo(attributes.get(), pango_attr_underline_new(PANGO_UNDERLINE_SINGLE), begin, words.size());
    }
    addTo(attributes.get(), pango_attr_insert_hyphens_new(FALSE), 0, words.size());
    addTo(attributes.get(), pango_attr_font_features_new("liga=0, clig=0"), 0, words.size()); // letters apart
    bool cut = false;
    for (const Span &word : wordsOf(words)) {
        const std::string letters = words.substr(word.begin, word.end - word.begin);
        if (!wordsFit(letters, points, width, Weight::Bold))
            cut = true;
        else if (hasBreakingMark(letters))
            addTo(attributes.get(), pango_attr_allow_breaks_new(FALSE), word.begin, word.end);
    }
    text->width = width;
    text->layout = layout(words, points, weight);
    pango_layout_set_attributes(text->layout.get(), attributes.get());
    pango_layout_set_wrap(text->layout.get(), cut ? PANGO_WRAP_WORD_CHAR : PANGO_WRAP_WORD);
    pango_layout_set_width(text->layout.get(), units(width));
    noteMissing(text->layout.get(), points);
    return text;
}

void Typesetter::noteMissing(PangoLayout *set, double points) {
    if (pango_layout_get_unknown_glyphs_count(set) == 0)
        return;
    const std::u32string all = codePoints(pango_layout_get_text(set));
    for (const char32_t character : std::set<char32_t>(all.begin(), all.end()))
        if (pango_layout_get_unknown_glyphs_count(
                layout(toUtf8({&character, 1}), points, Weight::Regular).get()) > 0)
            m_missing += character;
}

} // namespace reports
