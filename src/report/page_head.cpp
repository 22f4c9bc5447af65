// SPDX-License-Identifier: MIT
#include "report/page_head.hpp"

namespace pelt::report {

Document page_head(const std::string& title, bool guessed, bool demonstration) {
    const std::string invented = demonstration ? invented_data : "";
    Document out{Title{title, guessed ? not_measured : invented}};
    if (guessed && demonstration)
        out.push_back(Line{invented});
    return out;
}

} // namespace pelt::report
