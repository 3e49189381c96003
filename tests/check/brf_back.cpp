// brf_back PAPER.brf PAPER.txt: reads the braille back and compares its words with those of the text paper.
// Marks between words are left out, because records are punctuated in another way in braille.
#include "reports/writers.h"
#include <algorithm>
#include <cctype>
#include <fstream>
#include <iostream>
#include <map>
#include <sstream>

namespace {

std::string fileText(const char *path) {
    std::ifstream file(path, std::ios::binary);
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

void replaceAll(std::string &text, const std::string &from, const std::string &to) {
    for (std::size_t place = 0; (place = text.find(from, place)) != std::string::npos; place += to.size())
        text.replace(place, from.size(), to);
}

/// Letters and digits in any script, and what stands inside a word.
std::vector<std::string> wordsOf(std::string text) {
    for (const auto &[from, to] : std::map<std::string, std::string>{{"•", " "},
                                                                     {"–", " "},
                                                                     {"—", " "},
                                                                     {"“", "\""},
                                                                     {"”", "\""},
                                                                     {"’", "'"},
                                                                     {"‘", "'"},
                                                                     {"…", "..."}})
        replaceAll(text, from, to);
    std::vector<std::string> words;
    std::istringstream stream(text);
    for (std::string word; stream >> word;) {
        const auto inside = [](unsigned char c) { return std::isalnum(c) != 0 || c >= 0x80; };
        const auto first = std::find_if(word.begin(), word.end(), inside);
        const auto last = std::find_if(word.rbegin(), word.rend(), inside).base();
        if (first < last)
            words.emplace_back(first, last);
    }
    return words;
}

/// liblouis 3.24 writes these as the rules ask but reads them back wrong. A semicolon after a bracket comes
/// back as "be".
bool isSame(const std::string &read, const std::string &print) {
    static const std::map<std::string, std::string> misread{
        {"mustard", "mstard"}, {"enough", "en"}, {"U.S", "U.So"}};
    const auto known = misread.find(print);
    return read == print || (known != misread.end() && read == known->second) || read == print + ")be";
}

/// The first place where the two part, or nothing.
std::string difference(const std::vector<std::string> &braille, const std::vector<std::string> &print) {
    const auto [left, right] =
        std::mismatch(braille.begin(), braille.end(), print.begin(), print.end(), isSame);
    if (left == braille.end() && right == print.end())
        return {};
    const auto around = [](const auto &begin, const auto &end) {
        std::string words;
        for (auto word = begin; word != end && word != begin + 6; ++word)
            words += *word + ' ';
        return words;
    };
    return "after " + std::to_string(left - braille.begin()) + " words braille reads \"" +
           around(left, braille.end()) + "\", print reads \"" + around(right, print.end()) + "\"";
}

} // namespace

int main(int count, char **arguments) {
    if (count != 3) {
        std::cerr << "usage: brf_back PAPER.brf PAPER.txt\n";
        return 2;
    }
    const std::string brf = fileText(arguments[1]);
    const std::vector<std::string> print = wordsOf(fileText(arguments[2]));
    if (brf.empty() || print.empty()) {
        std::cerr << "brf_back: a paper is empty or not there\n";
        return 2;
    }
    std::string found;
    for (const int grade : {2, 1}) {
        const auto back = reports::readBrfBack(brf, grade);
        const std::string parted = back ? difference(wordsOf(*back), print) : back.error().sentence;
        if (parted.empty())
            return 0;
        found += "  grade " + std::to_string(grade) + ": " + parted + "\n";
    }
    std::cerr << arguments[1] << " does not say what " << arguments[2] << " says:\n" << found;
    return 1;
}
