// SPDX-License-Identifier: MIT
// Why a text is not YAML, in words for people who never heard of it. Inside read/ only.
#pragma once

#include "model/fault.hpp"

#include <cstddef>
#include <memory>
#include <string_view>

namespace pelt::read {

/// Where the parser gave up, and its own short word for the reason.
struct GaveUp {
    std::size_t byte = 0;
    std::string_view reason;
};

/// The fault behind a syntax error: an open or wrong bracket is looked for first, since the parser
/// notices those far from their place.
Fault explained(const std::shared_ptr<const Source>& source, const GaveUp& gave_up);

/// `wrap:12`: a key and its value without a blank between them.
bool lacks_blank(std::string_view text);

} // namespace pelt::read
