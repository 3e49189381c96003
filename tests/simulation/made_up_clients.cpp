#include "tests/simulation/made_up_clients.h"
#include "model/mark_sets.h"
#include "model/same_different.h"
#include <algorithm>
#include <cmath>

namespace simulation {

using model::MarkFeatures;

const std::vector<Group> &groups() {
    static const std::vector<Group> all{
        {"good", 1.5, 0.25, 1},
        {"reduced", 0.8, 0.3, 1},
        {"neuropathy", 0.5, 0.3, 0.4},
    };
    return all;
}

const std::vector<MarkFeatures> &nominalMarks() {
    static const std::vector<MarkFeatures> marks{
        {0, 0, 0},       {2.2, 0.3, 0}, {0.5, 2.5, 0}, {2.6, 2.8, 0.2}, {0.2, 0.4, 3},   {2.4, 0.5, 3.2},
        {4.8, 0.2, 0.4}, {5, 2.6, 0.3}, {4.9, 0.5, 3}, {0.8, 4.6, 1.2}, {3.2, 4.8, 2.8}, {1.6, 1.4, 5.2},
    };
    return marks;
}

MadeUpClient::MadeUpClient(const Group &group, std::uint64_t seed) : m_random(seed) {
    std::vector<MarkFeatures> marks = nominalMarks();
    for (MarkFeatures &mark : marks)
        for (double *axis : {&mark.size, &mark.height, &mark.texture})
            *axis += 0.35 * normal();
    const double size = std::exp(0.3 * normal());
    const double height = std::exp(0.3 * normal());
    const double texture = std::exp(0.3 * normal()) * group.textureWeight;
    const double sensitivity = group.sensitivity * std::exp(group.spread * normal());
    m_lapse = std::uniform_real_distribution<double>(0.02, 0.05)(m_random);
    m_criterion = std::max(0.3, 1.2 + 0.5 * normal());
    m_distance.assign(marks.size(), std::vector<double>(marks.size(), 0));
    for (std::size_t a = 0; a < marks.size(); ++a)
        for (std::size_t b = a + 1; b < marks.size(); ++b) {
            const double apart = std::hypot(size * (marks[a].size - marks[b].size),
                                            height * (marks[a].height - marks[b].height),
                                            texture * (marks[a].texture - marks[b].texture));
            m_distance[a][b] = m_distance[b][a] = sensitivity * apart * std::exp(0.15 * normal());
        }
}

model::TouchAnswer MadeUpClient::answer(const model::GivenPair &given) {
    const double same = model::sameAnswer(m_distance[given.first][given.second], m_criterion, m_lapse);
    return std::uniform_real_distribution<double>(0, 1)(m_random) < same ? model::TouchAnswer::Same
                                                                         : model::TouchAnswer::Different;
}

double MadeUpClient::confusion(std::size_t a, std::size_t b) const {
    return model::confusionAt(m_distance[a][b]);
}

std::size_t MadeUpClient::largestTrueSet() const {
    std::vector<model::MarkSet> apart(m_distance.size(), 0);
    for (std::size_t a = 0; a < apart.size(); ++a)
        for (std::size_t b = 0; b < apart.size(); ++b)
            if (a != b && confusion(a, b) < 0.05)
                apart[a] |= model::MarkSet{1} << b;
    return model::sizeOf(model::largestSet(apart));
}

} // namespace simulation
