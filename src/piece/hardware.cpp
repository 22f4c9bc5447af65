// SPDX-License-Identifier: MIT
#include "piece/piece.hpp"

#include <algorithm>
#include <set>

namespace pelt::piece {

std::vector<std::string> staying_on(const std::vector<Hardware>& hardware,
                                    const std::vector<std::string>& leave) {
    std::set<std::string> stays(leave.begin(), leave.end());
    // Every round adds what waits for something that stays; at most as many rounds as parts.
    for (bool grew = true; grew;) {
        grew = false;
        for (const Hardware& part : hardware) {
            const bool waits =
                std::any_of(part.after.begin(), part.after.end(),
                            [&](const std::string& name) { return stays.count(name) > 0; });
            grew = (waits && stays.insert(part.name).second) || grew;
        }
    }
    std::vector<std::string> out;
    for (const Hardware& part : hardware)
        if (stays.count(part.name) > 0)
            out.push_back(part.name);
    return out;
}

} // namespace pelt::piece
