// SPDX-License-Identifier: MIT
#include "piece/edge_work.hpp"
#include "piece/frame.hpp"
#include "piece/piece.hpp"

namespace pelt::piece {

PanelFinish finish_of(const Panel& panel, const DevelopedPanel& developed, const Film& film,
                      const std::vector<std::string>& left_on) {
    PanelFinish finish{heading_of(panel, film), {}};
    if (developed.blanks.empty())
        return finish;
    const Blank& blank = developed.blanks.front();
    const Work work = work_on(panel, blank, allowed_for(panel, film), left_on);
    for (std::size_t i = 0; i < blank.edges.size(); ++i) {
        const BlankEdge& edge = blank.edges[i];
        if (!edge.seam)
            finish.edges.push_back({edge.number, edge.name, edge.normal, work.edges[i].move,
                                    work.edges[i].stop});
    }
    return finish;
}

} // namespace pelt::piece
