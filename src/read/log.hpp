// SPDX-License-Identifier: MIT
// The log that a shop file names. Inside read/ only.
#pragma once

#include "model/log.hpp"
#include "read/context.hpp"
#include "read/yaml.hpp"

#include <memory>
#include <string>

namespace pelt::read {

/// Reads the log, which lies in the folder of the shop file or below. What is wrong with it is told
/// with its cells; none then.
std::shared_ptr<const Log> log_named(const Entry& entry, const std::string& file, Context& context);

/// A table with a row a piece of work.
Log log_of(const std::shared_ptr<const Source>& source, Context& context);

} // namespace pelt::read
