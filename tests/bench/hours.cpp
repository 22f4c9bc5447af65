// SPDX-License-Identifier: MIT
// Hours of the shipped vehicles in cast film, parts off, against what the trade takes (common
// practice, no source), and their panels by area and edges alone, the table of names off. Prints
// the tables of DEVELOPERS.md.
//   bench_hours VEHICLES FILM
#include "order/order.hpp"
#include "order/work.hpp"
#include "piece/piece.hpp"
#include "read/read.hpp"
#include "trade/labor.hpp"
#include "trade/names.hpp"

#include <algorithm>
#include <cstdio>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace {

using namespace pelt;

/// What the trade takes for a whole vehicle, in hours.
struct Usual {
    std::string file;
    double low;
    double high;
};
const std::vector<Usual> usual{{"town-hatchback", 25, 52}, {"family-sedan", 25, 55},
                               {"large-suv", 30, 65},      {"street-motorcycle", 4, 22},
                               {"round-coupe", 0, 0},      {"double-cab-pickup", 0, 0},
                               {"panel-van", 0, 0},        {"box-van", 0, 0}};

/// Of one kind of panel: how many were looked at, and what the formula made of them.
struct ByShape {
    int panels = 0;
    int outside = 0;
    double least = 1e9;
    double most = 0;
};

template <class T>
T value_of(read::Reading<T> reading) {
    for (const Fault& fault : reading.faults)
        if (stops({fault}))
            std::fprintf(stderr, "%s\n", to_string(fault).c_str());
    return *std::move(reading.value);
}

Job job_of(const std::string& vehicle, const std::string& film) {
    order::Request request;
    request.vehicles = {value_of(read::vehicle(value_of(read::load(vehicle))))};
    request.film = value_of(read::film(value_of(read::load(film))));
    const order::Outcome outcome = order::run(std::move(request));
    return outcome.plan->job();
}

void tell_hours(const Usual& row, const order::JobWork& work) {
    Minutes all;
    for (const Minutes& stage : work.stages)
        all = all + stage;
    constexpr double hour = 60;
    const double taken = all.taken / hour;
    std::string range = "not told";
    if (row.high > 0)
        range = std::to_string(static_cast<int>(row.low)) + " to " +
                std::to_string(static_cast<int>(row.high)) +
                (taken < row.low || taken > row.high ? ": outside" : "");
    std::printf("| %s | %.1f | %.1f | %.1f | %s |\n", row.file.c_str(), all.low / hour, taken,
                all.high / hour, range.c_str());
}

void look_at_panels(const Job& job, const order::JobWork& work,
                    std::map<PanelKind, ByShape>& kinds) {
    constexpr double mm2_a_square_metre = 1e6;
    for (const order::PanelWork& laid : work.panels) {
        const Panel& panel = job.vehicles[0].panels[static_cast<std::size_t>(laid.id.panel)];
        const DevelopedPanel& developed = job.developed[0][static_cast<std::size_t>(laid.id.panel)];
        const auto range = panel.is ? trade::time_on(*panel.is) : std::nullopt;
        if (!range)
            continue;
        const piece::RimLengths rims = piece::rims_of(panel, developed, job.film, job.left_on);
        const double minutes =
            trade::time_by_shape(*panel.is, developed.visible_mm2 / mm2_a_square_metre,
                                 rims.tucked / 1'000)
                .taken;
        ByShape& kind = kinds[*panel.is];
        ++kind.panels;
        kind.outside += minutes < range->low || minutes > range->high ? 1 : 0;
        kind.least = std::min(kind.least, minutes);
        kind.most = std::max(kind.most, minutes);
    }
}

} // namespace

int main(int count, char** words) {
    if (count < 3)
        return 2;
    std::map<PanelKind, ByShape> kinds;
    std::printf("| vehicle | low, h | taken, h | high, h | the trade, h |\n"
                "| --- | ---: | ---: | ---: | --- |\n");
    for (const Usual& row : usual) {
        const Job job = job_of(std::string(words[1]) + "/" + row.file + ".yaml", words[2]);
        const std::vector<LeftOut> left_out = job.left_out;
        const order::JobWork work = order::work_of(job, Shop{}, {}, &left_out);
        tell_hours(row, work);
        look_at_panels(job, work, kinds);
    }
    std::printf("\n| panel | by area and edges, min | the trade, min | panels outside |\n"
                "| --- | ---: | ---: | ---: |\n");
    for (const auto& [is, kind] : kinds)
        std::printf("| %s | %.0f to %.0f | %.0f to %.0f | %d of %d |\n",
                    std::string(trade::word_of(is)).c_str(), kind.least, kind.most,
                    trade::time_on(is)->low, trade::time_on(is)->high, kind.outside, kind.panels);
    return 0;
}
