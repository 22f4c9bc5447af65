// SPDX-License-Identifier: MIT
#include "nest/straight/patterns.hpp"

#include "nest/straight/bounds/program.hpp"

#include <algorithm>
#include <cmath>

namespace pelt::nest::straight {
namespace {

constexpr std::size_t least_pieces = 100;
constexpr std::size_t least_copies = 4; ///< of a kind, as the mean
constexpr std::size_t most_kinds = 250;
constexpr Steps longest_table = 20'000; ///< longer sides are too fine for the tables here
constexpr std::size_t rounds_per_kind = 20;
/// Tried for a section before the best is taken, times items.
constexpr std::size_t looks_at_once = 1'500;
constexpr double gain = 1.0005; ///< patterns that help less are not brought in

struct Item {
    std::size_t kind = 0;
    std::size_t orientation = 0;
    Steps along = 0;
    Steps across = 0;
};

/// The narrowest first.
std::vector<Item> items_of(const Problem& problem) {
    std::vector<Item> items;
    for (std::size_t k = 0; k < problem.kinds.size(); ++k)
        for (std::size_t orientation = 0; orientation < problem.kinds[k].orientations.size();
             ++orientation) {
            const Orientation& size = problem.kinds[k].orientations[orientation];
            if (problem.suits(problem.kinds[k], size, problem.stretches.front()))
                items.push_back({k, orientation, size.along, size.across});
        }
    std::sort(items.begin(), items.end(), [](const Item& a, const Item& b) {
        return std::tie(a.across, a.along, a.kind) < std::tie(b.across, b.along, b.kind);
    });
    return items;
}

std::vector<Steps> lengths_of(const std::vector<Item>& items) {
    std::vector<Steps> lengths;
    for (const Item& item : items)
        lengths.push_back(item.along);
    std::sort(lengths.begin(), lengths.end());
    lengths.erase(std::unique(lengths.begin(), lengths.end()), lengths.end());
    return lengths;
}

/// A section: columns of items side by side.
struct Pattern {
    Steps length = 0;
    double worth = 0;                              ///< a step of its length
    std::vector<std::vector<std::size_t>> columns; ///< items
};

class Pricing {
public:
    Pricing(const Problem& problem)
        : problem_(problem), items_(items_of(problem)), lengths_(lengths_of(items_)),
          width_(problem.stretches.front().across),
          at_once_(std::clamp<std::size_t>(looks_at_once / items_.size(), 1, lengths_.size())) {}

    const std::vector<Item>& items() const { return items_; }

    /// The best section whose length is one of the next few; worth 0 when there is none.
    Pattern next_best(const std::vector<double>& weights) {
        weights_ = &weights;
        make_columns();
        Pattern best;
        for (std::size_t i = 0; i < at_once_; ++i) {
            const Steps length = lengths_[at_];
            at_ = (at_ + 1) % lengths_.size();
            look_at(length, best);
        }
        for (std::vector<std::size_t>& column : best.columns)
            column = stack(column.front(), best.length);
        return best;
    }

    /// Calls after which all lengths were looked at.
    std::size_t calls_for_all() const { return lengths_.size() / at_once_ + 1; }

private:
    double weight(const Item& item) const { return (*weights_)[item.kind]; }

    /// By the last item that may be in a column, and its length: the most that a column weighs.
    void make_columns() {
        const auto longest = static_cast<std::size_t>(lengths_.back());
        columns_.assign(items_.size(), std::vector<double>(longest + 1, 0.0));
        for (std::size_t i = 0; i < items_.size(); ++i) {
            if (i > 0)
                columns_[i] = columns_[i - 1];
            const auto along = static_cast<std::size_t>(items_[i].along);
            for (std::size_t x = along; x <= longest; ++x) {
                const double before = problem_.stages == 2 ? 0 : columns_[i][x - along];
                columns_[i][x] = std::max(columns_[i][x], before + weight(items_[i]));
            }
        }
    }

    /// Columns side by side, any number of each.
    void look_at(Steps length, Pattern& best) {
        const auto size = static_cast<std::size_t>(width_) + 1;
        row_.assign(size, 0.0);
        taken_.assign(size, none);
        for (std::size_t i = 0; i < items_.size(); ++i) {
            const double worth = columns_[i][static_cast<std::size_t>(length)];
            const auto across = static_cast<std::size_t>(items_[i].across);
            for (std::size_t x = across; x < size; ++x)
                if (row_[x - across] + worth > row_[x]) {
                    row_[x] = row_[x - across] + worth;
                    taken_[x] = i;
                }
        }
        const double worth = row_.back() / static_cast<double>(length);
        if (worth <= best.worth)
            return;
        best = {length, worth, {}};
        for (std::size_t x = size - 1; taken_[x] != none;
             x -= static_cast<std::size_t>(items_[taken_[x]].across))
            best.columns.push_back({taken_[x]});
    }

    /// The items of the best column whose widest may be `last`.
    std::vector<std::size_t> stack(std::size_t last, Steps length) const {
        std::vector<std::size_t> out;
        auto x = static_cast<std::size_t>(length);
        for (std::size_t i = last + 1; i-- > 0;) {
            const auto along = static_cast<std::size_t>(items_[i].along);
            while (x >= along && columns_[i][x] > (i > 0 ? columns_[i - 1][x] : 0.0)) {
                out.push_back(i);
                if (problem_.stages == 2)
                    return out;
                x -= along;
            }
        }
        return out;
    }

    static constexpr std::size_t none = static_cast<std::size_t>(-1);
    const Problem& problem_;
    std::vector<Item> items_;
    std::vector<Steps> lengths_;
    Steps width_;
    std::size_t at_once_;
    std::size_t at_ = 0;
    const std::vector<double>* weights_ = nullptr;
    std::vector<std::vector<double>> columns_;
    std::vector<double> row_;
    std::vector<std::size_t> taken_;
};

std::vector<std::size_t> counts_of(const Pattern& pattern, const std::vector<Item>& items,
                                   std::size_t kinds) {
    std::vector<std::size_t> counts(kinds, 0);
    for (const std::vector<std::size_t>& column : pattern.columns)
        for (const std::size_t i : column)
            ++counts[items[i].kind];
    return counts;
}

Block block_of(const Pattern& pattern, const std::vector<Item>& items, const Problem& problem) {
    std::vector<Block> columns;
    for (const std::vector<std::size_t>& column : pattern.columns) {
        std::vector<Block> pieces;
        for (const std::size_t i : column)
            pieces.push_back(piece_block(problem, items[i].kind, items[i].orientation));
        columns.push_back(pieces.size() == 1 ? pieces.front() : in_line(std::move(pieces), along));
    }
    return columns.size() == 1 ? columns.front() : in_line(std::move(columns), across);
}

struct Used {
    Pattern pattern;
    double times = 0;
};

/// The patterns that the linear program ends with, those that are used most first.
std::vector<Used> patterns_of(const Problem& problem, Pricing& pricing) {
    const std::vector<Demand> demands = demands_of(problem);
    Program program(demands, problem.stretches.front().across);
    std::vector<Pattern> basis(demands.size());
    std::size_t idle = 0;
    for (std::size_t round = 0; round < rounds_per_kind * demands.size(); ++round) {
        Pattern pattern = pricing.next_best(program.weights());
        idle = pattern.worth > gain ? 0 : idle + 1;
        if (idle == pricing.calls_for_all())
            break;
        if (idle > 0)
            continue;
        const auto counts = counts_of(pattern, pricing.items(), demands.size());
        Program::Column column(demands.size());
        for (std::size_t k = 0; k < column.size(); ++k)
            column[k] = static_cast<double>(counts[k]) / static_cast<double>(pattern.length);
        const auto row = program.pivot(column);
        if (!row)
            break;
        basis[*row] = std::move(pattern);
    }
    std::vector<Used> out;
    for (std::size_t row = 0; row < basis.size(); ++row)
        if (basis[row].length > 0)
            out.push_back({basis[row], program.used(row) / static_cast<double>(basis[row].length)});
    std::stable_sort(out.begin(), out.end(),
                     [](const Used& a, const Used& b) { return a.times > b.times; });
    return out;
}

} // namespace

bool is_one_kind_of_film(const Problem& problem) {
    const Stretch& first = problem.stretches.front();
    return std::all_of(problem.stretches.begin(), problem.stretches.end(), [&](const Stretch& s) {
        return s.is_new && s.across_um == first.across_um && s.arrow_known == first.arrow_known;
    });
}

bool kinds_repeat(const Problem& problem) {
    return !problem.kinds.empty() && problem.kinds.size() <= most_kinds &&
           problem.pieces() >= least_pieces &&
           problem.pieces() >= least_copies * problem.kinds.size() &&
           is_one_kind_of_film(problem) && problem.stretches.front().across <= longest_table &&
           std::all_of(problem.kinds.begin(), problem.kinds.end(), [](const Kind& kind) {
               return std::all_of(kind.orientations.begin(), kind.orientations.end(),
                                  [](const Orientation& orientation) {
                                      return orientation.along <= longest_table;
                                  });
           });
}

Repeated repeated_sections(const Problem& problem) {
    Repeated out;
    for (const Kind& kind : problem.kinds)
        out.left.push_back(kind.demand());
    Pricing pricing(problem);
    for (const Used& used : patterns_of(problem, pricing)) {
        const auto counts = counts_of(used.pattern, pricing.items(), problem.kinds.size());
        auto times = static_cast<std::size_t>(std::floor(used.times + 1e-6));
        for (std::size_t k = 0; k < counts.size(); ++k)
            if (counts[k] > 0)
                times = std::min(times, out.left[k] / counts[k]);
        for (std::size_t k = 0; k < counts.size(); ++k)
            out.left[k] -= times * counts[k];
        out.sections.insert(out.sections.end(), times,
                            block_of(used.pattern, pricing.items(), problem));
    }
    return out;
}

} // namespace pelt::nest::straight
